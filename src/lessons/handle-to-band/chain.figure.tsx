/**
 * The whole chain from the handle to the steel on one invented mill, which the reader drives by turning the handle;
 * the list of its stages; the ribbon of the work.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import { workingStress } from '../../core/assumptions.ts';
import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { CutStrand } from './CutStrand.tsx';
import { percentText } from './ribbon-parts.ts';
import { StageList } from './StageList.tsx';
import { TurnedHandle } from './TurnedHandle.tsx';
import { StageMark, TurnForces } from './TurnForces.tsx';
import { TurnLoop } from './TurnLoop.tsx';
import { TurnNames } from './TurnNames.tsx';
import { TurnScrew } from './TurnScrew.tsx';
import { type TurnLayout, type TurnPlaces, turnLayout, turnPlaces } from './turn-layout.ts';
import { WorkRibbon } from './WorkRibbon.tsx';

function teller({ values, system }: FigureState) {
  return (name: string, kind: QuantityKind, digits?: number) =>
    formatQuantity(values[name] ?? 0, kind, system, { digits });
}

function finding(state: FigureState): string {
  const say = teller(state);
  if (state.values['turns'] === 0)
    return `No turn yet: the handle feels only the screw’s drag, ${say('torque', 'torque')}, and the band carries nothing.`;
  const share = percentText(state.values['bandShare'] ?? 0);
  return `${say('turns', 'turns')} put ${say('stress', 'stress')} into the steel, and ${share} of the hand’s work into the band.`;
}

function description(state: FigureState): string {
  const say = teller(state);
  const force = (name: string) => say(name, 'force');
  return `A band runs round two wheels on a beam. A handle turned with ${say('torque', 'torque')} draws the right wheel outwards by a screw: thrust ${force('thrust')}, force on the wheel ${force('wheelForce')}, in each strand ${force('strandForce')}, stress ${say('stress', 'stress')}, on the dial ${say('stretch', 'stretch')}. Torque and dial can be measured, the rest only inferred. The wheel comes out by ${say('wheelTravel', 'stretch')}, the frame gives ${say('frameTravel', 'stretch')}. A ribbon parts the work of ${say('work', 'energy')} into ${say('bandWork', 'energy')} in the band, ${say('frameWork', 'energy')} in the frame, and heat.`;
}

function notes({ narrow, system }: FigureState): readonly string[] {
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

function dialMark(state: FigureState, layout: TurnLayout, places: TurnPlaces) {
  const { left, axis, narrow, scale } = layout;
  const end = (left + places.wheelAtRest) / 2 + (OTTERSLEIGH.gaugeLength / 2) * scale;
  return (
    <StageMark
      state={state}
      stage={6}
      name="stretch"
      kind="stretch"
      x={end - (narrow ? 16 : 30)}
      y={axis - places.radius - (narrow ? 12 : 24)}
      ink="steel"
      anchor="end"
      words=" on the dial"
      short="dial"
    />
  );
}

function handleMark(state: FigureState, { end, axis, narrow }: TurnLayout) {
  const [x, y] = narrow ? [end.x + 42, axis - 32] : [end.x, axis + end.reach + 40];
  const say = teller(state);
  return (
    <g>
      <StageMark
        state={state}
        stage={1}
        name="torque"
        kind="torque"
        x={x}
        y={y}
        ink="hand"
        anchor="middle"
      />
      {!narrow && (
        <text x={x} y={y + 22} text-anchor="middle" data-sym="screwTravel">
          {say('turns', 'turns')} draw {say('screwTravel', 'stretch')}
        </text>
      )}
    </g>
  );
}

function Drawing(state: FigureState) {
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
export const figure: FigureModule = { finding, description, notes, Drawing };
