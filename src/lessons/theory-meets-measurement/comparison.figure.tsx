/**
 * Theory meets measurement: a prediction with its width, a line for the reader to tilt, readings with their errors,
 * what the line misses them by, and both results beside each other.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { Intervals } from './comparison/Intervals.tsx';
import { comparisonLayout } from './comparison/layout.ts';
import { MissStrip } from './comparison/MissStrip.tsx';
import { PlotWithLine, readingsFromZero, yorkStress } from './comparison/PlotWithLine.tsx';
import { theoryMeetsMeasurement } from './model.ts';
import { known } from './results.worked.ts';
import { AgreementLine, AgreementNumbers } from './sheets/AgreementNumbers.tsx';
import { AgreementScale, agreementText } from './sheets/AgreementScale.tsx';
import type { Figure, State } from './state.ts';

const NEARLY = 1e-3; // of the efficiency: within half a step, the line is still where the theory put it

const say = teller(theoryMeetsMeasurement);

function words(state: State) {
  const { values, system } = state;
  return {
    mine: say(state, 'efficiency'),
    predicted: say(state, 'predictedStress'),
    measured: say(state, 'measuredStress'),
    agreement: agreementText(values.agreement),
    believed: say(state, 'predictedEfficiency'),
    own: formatQuantity(values.ownEfficiency, 'percent', system, {
      uncertainty: values.ownExpanded,
    }),
  };
}

function finding(state: State): string {
  const { mine, predicted, measured, agreement, believed, own } = words(state);
  const { efficiency, lineMissed, readingsUsed, shown } = state.values;
  if (shown === 'fit')
    return `All readings together give an efficiency of ${own}. The prediction was ${believed}.`;
  if (Math.abs(efficiency - known.predictedEfficiency) < NEARLY)
    return `Predicted ${predicted}, measured ${measured}. The agreement number is ${agreement}: they agree.`;
  if (lineMissed === 0)
    return `At ${mine} your line meets all ${readingsUsed} filled readings, so they can no longer test it.`;
  const missed = lineMissed === readingsUsed ? 'all' : `${lineMissed} of the`;
  return `At ${mine} your line misses the error bars of ${missed} ${readingsUsed} filled readings.`;
}

function description(state: State): string {
  const { mine, predicted, measured } = words(state);
  return `Stress over torque. A gray area is the prediction, a blue line is an efficiency of ${mine}, ten readings have error bars both ways. Below, how far the line misses each reading. Beside it the prediction, ${predicted}, and the measurement, ${measured}, each with its interval.`;
}

function notes({ system }: State): readonly string[] {
  return [
    'readings of the invented mill at Ottersleigh; stress is 0 at no tension',
    'the measured stress comes from all the readings, not from the last one alone',
    'area and bars: 95 %, twice the standard uncertainty; the bars of the readings show the scatter of wrench and dial',
    `no-load torque of ${formatQuantity(known.drag, 'torque', system, { digits: 2 })} taken off`,
  ];
}

function missedLine({ lineSlope, shown }: State['values']) {
  if (shown === 'fit') return yorkStress;
  return (torque: number) => lineSlope * (torque - known.drag);
}

/** The agreement numbers on their scale, or on a phone in words alone. */
function Agreement({ narrow, values }: State) {
  const { agreement: frame } = comparisonLayout(narrow);
  const numbers = { x: frame.left, agreement: values.agreement, mine: values.lineAgreement };
  if (narrow) return <AgreementLine {...numbers} y={frame.top} />;
  return (
    <g>
      <AgreementNumbers {...numbers} y={frame.top - 14} />
      <AgreementScale {...numbers} frame={frame} />
    </g>
  );
}

function Drawing(state: State) {
  return (
    <Sheet idPrefix={state.idPrefix} size={comparisonLayout(state.narrow)}>
      <PlotWithLine state={state} />
      <MissStrip state={state} readings={readingsFromZero} stressOf={missedLine(state.values)} />
      <Intervals {...state} />
      <Agreement {...state} />
    </Sheet>
  );
}

/** The figure of the lesson `theory-meets-measurement`. */
export const figure: Figure = { finding, description, notes, Drawing };
