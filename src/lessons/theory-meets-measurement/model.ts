/**
 * Theory meets measurement: the predicted stress over torque beside the readings of one mill, a line of the reader's
 * own efficiency, the fit, the intercept with its two meanings, and four sheets with a reason to be found.
 * Units: SI.
 * Source: core/tensioner, core/agreement (`agreement-standards`); what the readings come to: ottersleigh/ beside it; the mill is invented.
 */
import { agreementNumber } from '../../core/agreement.ts';
import { stressFromTorque } from '../../core/screw.ts';
import { BAR_REACH } from '../../figures/stress-plot/bar-reach.ts';
import { defineModel, type InputSpec } from '../../models/define-model.ts';
import { OUTPUTS } from './outputs.ts';
import { REASON_WORDS, SHEET_NAMES } from './reasons.ts';
import { known, readings, stressPerStretch, zeroStress } from './results.worked.ts';

const { drag, topTorque, lead, area } = known;

function choice(label: string, options: readonly string[]): InputSpec {
  const step = { metric: 1, us: 1 };
  return {
    kind: 'count',
    symbol: '',
    label,
    default: 0,
    min: 0,
    max: options.length - 1,
    step,
    options,
  };
}

/** How many error bars of the filled readings (95 %, both errors together) a line through the drag misses. */
function missedBy(slope: number): number {
  const missed = readings.filter(({ torque, stress, sdTorque, sdStress, inToe }) => {
    const miss = stress - zeroStress - slope * (torque - drag);
    return !inToe && Math.abs(miss) > BAR_REACH * Math.hypot(sdStress, slope * sdTorque);
  });
  return missed.length;
}

/** The reader's own line at the highest torque, taken to be as uncertain, for its size, as the prediction. */
function lineValues(efficiency: number) {
  const tensioner = { lead, efficiency, dragTorque: drag };
  const lineStress = stressFromTorque(tensioner, { area }, topTorque);
  const lineSlope = lineStress / (topTorque - drag);
  const lineExpanded = (lineStress * known.predictedExpanded) / known.predictedStress;
  const lineAgreement = agreementNumber(
    { value: known.measuredStress, expanded: known.measuredExpanded },
    { value: lineStress, expanded: lineExpanded },
  );
  return { lineStress, lineSlope, lineExpanded, lineMissed: missedBy(lineSlope), lineAgreement };
}

/** What the line through both errors says of the zero, if the drag is as assumed. */
function zeroErrors(assumedDrag: number) {
  const zeroErrorStress = known.yorkIntercept + known.yorkSlope * assumedDrag;
  const zeroErrorStretch = zeroErrorStress / stressPerStretch;
  return { zeroErrorStress, zeroErrorStretch, zeroBelowByLine: -zeroErrorStretch };
}

/** Efficiency to line and agreement; drag to zero error; sheet and reason to what fits. */
export const theoryMeetsMeasurement = defineModel({
  name: 'theory-meets-measurement',
  inputs: {
    efficiency: {
      kind: 'percent',
      symbol: 'e',
      label: 'efficiency of the screw',
      default: known.predictedEfficiency,
      min: 0.15,
      max: 0.42,
      step: { metric: 0.002, us: 0.002 },
    },
    shown: choice('beside the readings', ['your line', 'the fit']),
    assumedDrag: {
      kind: 'torque',
      symbol: 'M_d',
      label: 'drag taken as known',
      default: drag,
      min: 0,
      max: 5,
      step: { metric: 0.05, us: 0.01355818 },
    },
    sheet: choice('look at', SHEET_NAMES),
    reason: choice('suppose that', REASON_WORDS),
  },
  outputs: OUTPUTS,
  evaluate: ({ efficiency, assumedDrag }) => ({
    ...known,
    ...lineValues(efficiency),
    ...zeroErrors(assumedDrag),
  }),
});
