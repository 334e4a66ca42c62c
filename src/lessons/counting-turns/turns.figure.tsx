/**
 * Counting turns: a mill whose nut is turned, what gives on it, and where the turns went; four ways of tightening.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { workingStress } from '../../core/assumptions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';
import { countingTurns } from './model.ts';
import type { Figure, State } from './state.ts';
import { BeamFrame } from './turns/BeamFrame.tsx';
import { CylinderInPlace } from './turns/CylinderInPlace.tsx';
import { LoopWords } from './turns/LoopWords.tsx';
import { countingLayout } from './turns/layout.ts';
import { NutFromOutside } from './turns/NutFromOutside.tsx';
import { NutOnScrew } from './turns/NutOnScrew.tsx';
import { PressedPiston } from './turns/PressedPiston.tsx';
import { PressureRule } from './turns/PressureRule.tsx';
import { countingPlaces } from './turns/places-at.ts';
import { ScrewInPlace } from './turns/ScrewInPlace.tsx';
import { SlackLoop } from './turns/SlackLoop.tsx';
import { StressRule } from './turns/StressRule.tsx';
import { TravelBar } from './turns/TravelBar.tsx';

const PARTS = {
  stiffFrame: 'the nut bears straight on the frame',
  discWashers: 'disc washers are between nut and frame',
  softSpring: 'a long soft spring is between nut and frame',
  oil: 'oil pushes the movable axle',
} as const;

const say = teller(countingTurns);

/** The spring’s part of the sentence, where there is one. */
function springPart(state: State): string {
  const { tensioner, springTurns } = state.values;
  if (springTurns === 0) return '';
  return `, the ${tensioner === 'discWashers' ? 'washers' : 'spring'} ${say(state, 'springTurns')}`;
}

function oilFinding(state: State): string {
  if (state.values.stress === 0)
    return `At ${say(state, 'pressure')} the oil has not yet moved the seal: the stress is 0.`;
  return `At ${say(state, 'pressure')} the stress is ${say(state, 'stress')}, whatever the slack was: pressure does not count slack.`;
}

function finding(state: State): string {
  const { values } = state;
  if (values.tensioner === 'oil') return oilFinding(state);
  const turns = say(state, 'turns');
  const torque = say(state, 'torque');
  if (values.turns === 0) return 'The nut just touches: nothing has moved and nothing pulls yet.';
  if (values.stress === 0)
    return `${turns}, all of it slack: the band is not tight yet. The wrench shows only the no-load torque, ${torque}.`;
  const far = values.stress > workingStress.high ? ', more than small mills use' : '';
  return `Of ${turns}, slack took ${say(state, 'slackTurns')}, the band ${say(state, 'bandTurns')}, the frame ${say(state, 'frameTurns')}${springPart(state)}. The stress is ${say(state, 'stress')}${far}; the wrench shows ${torque}.`;
}

function description(state: State): string {
  const part = PARTS[state.values.tensioner];
  return `A band runs round two wheels that a frame holds apart; ${part}. The band gives ${say(state, 'bandTravel', 3)}, the frame ${say(state, 'frameTravel', 3)}, the spring ${say(state, 'springTravel', 3)}; slack took ${say(state, 'slackTravel', 3)}.`;
}

function notes(state: State): readonly string[] {
  const { mill, times } = countingPlaces(state, countingLayout(state.narrow));
  const range = formatRange(workingStress.low, workingStress.high, 'stress', state.system);
  const lead = state.values.lead;
  const screw =
    lead > 0 ? [`lead of its screw ${formatQuantity(lead, 'lengthPerTurn', state.system)}`] : [];
  const wound =
    lead > 0 ? ['the spiral counts the turns of the nut, thin while it takes up slack'] : [];
  const washers =
    mill.spring.kind === 'discs'
      ? [`washers pressed ${say(state, 'washerShare', 2)} of the way to flat`]
      : [];
  return [
    [`an invented mill at ${mill.place}`, ...screw].join(', '),
    `how far band and frame give is drawn × ${times}, the frame’s at its end plate`,
    'dashed: before the pull',
    'slack, spring and travel are true to scale; the tensioner is drawn again, larger',
    ...wound,
    ...washers,
    `shaded: in use on small mills, ${range} (common practice, no source)`,
  ];
}

function Drawing(state: State) {
  const layout = countingLayout(state.narrow);
  const props = { state, layout, places: countingPlaces(state, layout) };
  const isOil = state.values.tensioner === 'oil';
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <SlackLoop places={props.places} />
      <BeamFrame places={props.places} id={`${state.idPrefix}-mill`} />
      {props.places.mill.cylinder ? (
        <CylinderInPlace places={props.places} />
      ) : (
        <ScrewInPlace places={props.places} {...state.values} />
      )}
      <LoopWords {...props} />
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

/** The second figure of the lesson `counting-turns`. */
export const figure: Figure = { finding, description, notes, Drawing };
