/**
 * Counting turns: a mill whose nut is turned, what gives on it, and where the turns went; four ways of tightening.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { workingStress } from '../../core/assumptions.ts';
import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { BowingFrame } from './turns/BowingFrame.tsx';
import { countingLayout, countingPlaces } from './turns/layout.ts';
import { NutFromOutside } from './turns/NutFromOutside.tsx';
import { NutOnScrew } from './turns/NutOnScrew.tsx';
import { PressedPiston } from './turns/PressedPiston.tsx';
import { PressureRule } from './turns/PressureRule.tsx';
import { SlackLoop } from './turns/SlackLoop.tsx';
import { StressRule } from './turns/StressRule.tsx';
import { TensionerInPlace } from './turns/TensionerInPlace.tsx';
import { TravelBar } from './turns/TravelBar.tsx';

const PARTS = [
  'the nut bears straight on the frame',
  'disc washers stand between nut and frame',
  'a long soft spring stands between nut and frame',
  'oil pushes the movable axle',
] as const;

const say = ({ values, system }: FigureState, name: string, kind: QuantityKind, digits?: number) =>
  formatQuantity(values[name] ?? 0, kind, system, { digits });

/** The spring’s part of the sentence, where there is one. */
function springPart(state: FigureState): string {
  const { tensioner, springTurns = 0 } = state.values;
  if (springTurns === 0) return '';
  return `, the ${tensioner === 1 ? 'washers' : 'spring'} ${say(state, 'springTurns', 'turns')}`;
}

function oilFinding(state: FigureState): string {
  if (state.values['stress'] === 0)
    return `At ${say(state, 'pressure', 'pressure')} the oil has not yet moved the seal: the steel carries nothing.`;
  return `At ${say(state, 'pressure', 'pressure')} the steel carries ${say(state, 'stress', 'stress')}, whatever the slack was: pressure does not count it.`;
}

function finding(state: FigureState): string {
  const { values } = state;
  if (values['tensioner'] === 3) return oilFinding(state);
  const turns = say(state, 'turns', 'turns');
  const torque = say(state, 'torque', 'torque');
  if (values['turns'] === 0) return 'The nut just touches: nothing is turned, nothing pulls yet.';
  if (values['stress'] === 0)
    return `${turns}, and all of it slack: the steel carries nothing. The wrench shows only the drag, ${torque}.`;
  const far = (values['stress'] ?? 0) > workingStress.high ? ', more than small mills use' : '';
  return `Of ${turns}, slack took ${say(state, 'slackTurns', 'turns')}, the band ${say(state, 'bandTurns', 'turns')}, the frame ${say(state, 'frameTurns', 'turns')}${springPart(state)}. The steel carries ${say(state, 'stress', 'stress')}${far}; the wrench shows ${torque}.`;
}

function description(state: FigureState): string {
  const part = PARTS[state.values['tensioner'] ?? 0] ?? PARTS[0];
  return `A band runs round two wheels that a frame holds apart; ${part}. The band gives ${say(state, 'bandTravel', 'length', 3)}, the frame ${say(state, 'frameTravel', 'length', 3)}, the spring ${say(state, 'springTravel', 'length', 3)}; slack took ${say(state, 'slackTravel', 'length', 3)}.`;
}

function notes(state: FigureState): readonly string[] {
  const { mill, times } = countingPlaces(state, countingLayout(state.narrow));
  const range = formatRange(workingStress.low, workingStress.high, 'stress', state.system);
  const lead = state.values['lead'] ?? 0;
  const screw =
    lead > 0 ? [`lead of its screw ${formatQuantity(lead, 'lengthPerTurn', state.system)}`] : [];
  const wound =
    lead > 0
      ? ['the wound line counts the turns of the nut, thin while only slack was taken up']
      : [];
  const washers =
    mill.spring.kind === 'discs'
      ? [`washers pressed ${say(state, 'washerShare', 'percent', 2)} of the way to flat`]
      : [];
  return [
    [`an invented mill at ${mill.place}`, ...screw].join(', '),
    `stretch of the band and bow of the frame drawn × ${times}`,
    'dashed: as it stood before the pull; the bow is that of a beam bent at both ends',
    'slack, spring and travel true to scale; the tensioner once more, larger',
    ...wound,
    ...washers,
    `shaded: in use on small mills, ${range} (common practice, no source)`,
  ];
}

function Drawing(state: FigureState) {
  const layout = countingLayout(state.narrow);
  const props = { state, layout, places: countingPlaces(state, layout) };
  const isOil = state.values['tensioner'] === 3;
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <BowingFrame {...props} />
      <SlackLoop {...props} />
      <TensionerInPlace {...props} />
      {!state.narrow && (
        <text class="note" x={layout.detail.x - 62} y={12}>
          the tensioner, drawn larger
        </text>
      )}
      {isOil ? <PressedPiston {...props} /> : <NutOnScrew {...props} />}
      <StressRule {...props} />
      <TravelBar {...props} />
      {isOil ? <PressureRule {...props} /> : <NutFromOutside {...props} />}
    </Sheet>
  );
}

/** The first figure of the lesson `counting-turns`. */
export const figure: FigureModule = { finding, description, notes, Drawing };
