/**
 * Theory meets measurement: a prediction with its width, a line for the reader to tilt, readings with their errors,
 * what the line misses them by, and both results beside each other.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { linearScale } from '../../figures/scale.ts';
import { torqueScales } from '../../figures/stress-plot/scales.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { Intervals } from './comparison/Intervals.tsx';
import { comparisonLayout, STRESS_ENDS, TORQUE_ENDS } from './comparison/layout.ts';
import { MissStrip } from './comparison/MissStrip.tsx';
import { PlotWithLine, readingsFromZero, yorkStress } from './comparison/PlotWithLine.tsx';
import { known } from './results.worked.ts';
import { AgreementNumbers } from './sheets/AgreementNumbers.tsx';
import { AgreementScale, agreementText } from './sheets/AgreementScale.tsx';

const NEARLY = 1e-3; // of the efficiency: within half a step, the line still stands where the theory put it

function words({ values, system }: FigureState) {
  const say = (name: string, kind: 'percent' | 'stress' | 'ratio', digits?: number) =>
    formatQuantity(values[name] ?? 0, kind, system, { digits });
  return {
    mine: say('efficiency', 'percent'),
    predicted: say('predictedStress', 'stress'),
    measured: say('measuredStress', 'stress'),
    agreement: agreementText(values['agreement'] ?? 0),
    believed: say('predictedEfficiency', 'percent'),
    own: formatQuantity(values['ownEfficiency'] ?? 0, 'percent', system, {
      uncertainty: values['ownExpanded'],
    }),
  };
}

function finding(state: FigureState): string {
  const { mine, predicted, measured, agreement, believed, own } = words(state);
  const { efficiency = 0, lineMissed = 0, readingsUsed = 0, shown = 0 } = state.values;
  if (shown === 1)
    return `All readings together give this screw an efficiency of ${own}; its friction had promised ${believed}.`;
  if (Math.abs(efficiency - known.predictedEfficiency) < NEARLY)
    return `Predicted ${predicted}, measured ${measured}: this first prediction has an agreement number of ${agreement}, so the two agree.`;
  if (lineMissed === 0)
    return `At ${mine} your line meets all ${readingsUsed} filled readings. It is now taken from them, and they can no longer test it.`;
  return `At ${mine} your line misses the error bars of ${lineMissed} of the ${readingsUsed} filled readings.`;
}

function description(state: FigureState): string {
  const { mine, predicted, measured } = words(state);
  return `Stress over torque. A grey area is the prediction, a blue line stands for an efficiency of ${mine}, ten readings have error bars both ways. Below it what the line misses the readings by. Beside it prediction, ${predicted}, and measurement, ${measured}, each with its interval.`;
}

function notes({ system }: FigureState): readonly string[] {
  return [
    'readings of the invented mill at Ottersleigh, stress counted from no tension',
    'area and bars: 95 %, twice the standard uncertainty; those of the readings hold the scatter of wrench and dial',
    `drag of ${formatQuantity(known.drag, 'torque', system, { digits: 2 })} taken off`,
  ];
}

function missedLine({ lineSlope = 0, shown = 0 }: FigureState['values']) {
  if (shown === 1) return yorkStress;
  return (torque: number) => lineSlope * (torque - known.drag);
}

function Drawing(state: FigureState) {
  const layout = comparisonLayout(state.narrow);
  const { intervals } = layout;
  const scales = torqueScales(layout.plot, TORQUE_ENDS, STRESS_ENDS);
  const level = linearScale(STRESS_ENDS, [intervals.left, intervals.right]);
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <PlotWithLine state={state} scales={scales} />
      <MissStrip
        state={state}
        frame={layout.strip}
        torqueEnds={TORQUE_ENDS}
        readings={readingsFromZero()}
        stressOf={missedLine(state.values)}
      />
      <Intervals state={state} frame={intervals} place={state.narrow ? level : scales.y} />
      <AgreementNumbers
        x={state.narrow ? 0 : layout.agreement.left}
        y={layout.agreement.top + (state.narrow ? 28 : -14)}
        agreement={state.values['agreement'] ?? 0}
        mine={state.values['lineAgreement'] ?? 0}
      />
      <AgreementScale
        frame={layout.agreement}
        agreement={state.values['agreement'] ?? 0}
        mine={state.values['lineAgreement'] ?? 0}
      />
    </Sheet>
  );
}

/** The figure of the lesson `theory-meets-measurement`. */
export const figure: FigureModule = { finding, description, notes, Drawing };
