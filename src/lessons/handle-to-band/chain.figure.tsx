/**
 * The whole chain from the handle to the steel on one invented mill, which the reader drives by turning the handle;
 * the list of its stages; the ribbon of the work.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { workingStress } from '../../core/assumptions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { formatRange } from '../../units/format-quantity.ts';
import { CutStrand } from './CutStrand.tsx';
import { handleToBand } from './model.ts';
import { percentText } from './ribbon-parts.ts';
import { StageList } from './StageList.tsx';
import type { Figure, State } from './state.ts';
import { TurnedHandle } from './TurnedHandle.tsx';
import { StageMark, TurnForces } from './TurnForces.tsx';
import { TurnLoop } from './TurnLoop.tsx';
import { TurnNames } from './TurnNames.tsx';
import { TurnScrew } from './TurnScrew.tsx';
import { type TurnLayout, type TurnPlaces, turnLayout, turnPlaces } from './turn-layout.ts';
import { WorkRibbon } from './WorkRibbon.tsx';

const say = teller(handleToBand);

function finding(state: State): string {
  if (state.values.turns === 0)
    return `No turn yet: the handle feels only the no-load torque, ${say(state, 'torque')}, and the band carries nothing.`;
  const share = percentText(state.values.bandShare);
  return `${say(state, 'turns')} put ${say(state, 'stress')} into the steel, and ${share} of the hand’s work into the band.`;
}

function description(state: State): string {
  return `A band runs round two wheels on a beam. A handle turned with ${say(state, 'torque')} draws the right wheel outwards by a screw: thrust ${say(state, 'thrust')}, force on the wheel ${say(state, 'wheelForce')}, in each strand ${say(state, 'strandForce')}, stress ${say(state, 'stress')}, on the dial ${say(state, 'stretch')}. Torque and dial can be measured, the rest only inferred. The wheel comes out by ${say(state, 'wheelTravel')}, the frame gives ${say(state, 'frameTravel')}. A ribbon parts the work of ${say(state, 'work')} into ${say(state, 'bandWork')} in the band, ${say(state, 'frameWork')} in the frame, and heat.`;
}

function notes({ narrow, system }: State): readonly string[] {
  const { times } = turnLayout(narrow);
  const inUse = formatRange(workingStress.low, workingStress.high, 'stress', system);
  return [
    `movement of wheel and frame drawn × ${times}`,
    'wheels, strands and gauge length to scale; screw, handle and cut strand larger',
    'force arrows to one scale; all the frame’s give drawn at its end plate',
    'turns and work counted from no tension, slack already out',
    `in use on small mills: ${inUse} (common practice, no source)`,
  ];
}

function dialMark(state: State, layout: TurnLayout, places: TurnPlaces) {
  const { left, axis, narrow, scale } = layout;
  const end = (left + places.wheelAtRest) / 2 + (OTTERSLEIGH.gaugeLength / 2) * scale;
  return (
    <StageMark
      state={state}
      stage={6}
      name="stretch"
      x={end - (narrow ? 16 : 30)}
      y={axis - places.radius - (narrow ? 12 : 24)}
      ink="steel"
      anchor="end"
      words=" on the dial"
      short="dial"
    />
  );
}

function handleMark(state: State, { end, axis, narrow }: TurnLayout) {
  const [x, y] = narrow ? [end.x + 42, axis - 32] : [end.x, axis + end.reach + 40];
  return (
    <g>
      <StageMark state={state} stage={1} name="torque" x={x} y={y} ink="hand" anchor="middle" />
      {!narrow && (
        <text x={x} y={y + 22} text-anchor="middle" data-sym="screwTravel">
          {say(state, 'turns')} draw {say(state, 'screwTravel')}
        </text>
      )}
    </g>
  );
}

function Drawing(state: State) {
  const layout = turnLayout(state.narrow);
  const places = turnPlaces(state, layout);
  const part = { state, layout, places };
  return (
    <Sheet idPrefix={state.idPrefix} size={layout}>
      <path
        class="centre"
        d={`M${layout.left - 20} ${layout.axis}H${layout.end.x + layout.end.reach}`}
      />
      <TurnLoop {...part} />
      <TurnScrew {...part} />
      <CutStrand {...part} />
      <TurnNames {...part} />
      <TurnForces {...part} />
      {dialMark(state, layout, places)}
      {handleMark(state, layout)}
      <StageList state={state} layout={layout} />
      <WorkRibbon state={state} layout={layout} />
      <TurnedHandle {...part} />
    </Sheet>
  );
}

/** The figure of the lesson `handle-to-band`. */
export const figure: Figure = { finding, description, notes, Drawing };
