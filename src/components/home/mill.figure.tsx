/**
 * The site's one idea in a drawing: the reader turns the handle of one invented mill, and screw, wheel, strands, steel
 * and dial answer.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */

import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { Handle } from '../../figures/Handle.tsx';
import { Callouts } from '../../figures/mill/Callouts.tsx';
import { EndHandle } from '../../figures/mill/EndHandle.tsx';
import { BandSection, Gauge } from '../../figures/mill/Gauge.tsx';
import { Loop } from '../../figures/mill/Loop.tsx';
import { type MillLayout, millLayout, wheelAt } from '../../figures/mill/layout.ts';
import { StressScale } from '../../figures/mill/StressScale.tsx';
import { Tensioner } from '../../figures/mill/Tensioner.tsx';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { turned } from '../../figures/turned.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { titleDigits, titleMill } from '../../models/mills/title-mill.ts';
import { formatRange } from '../../units/format-quantity.ts';

type State = FigureState<typeof titleMill>;

const tell = teller(titleMill);
const say = (state: State, name: Parameters<typeof titleDigits>[0]) =>
  tell(state, name, titleDigits(name));

function finding(state: State): string {
  return `${say(state, 'torque')} puts about ${say(state, 'stress')} into the steel. A dial should move ${say(state, 'stretch')}.`;
}

function description(state: State): string {
  return `A band runs round two wheels on a beam. A screw with a handle pulls the right wheel outwards; each of the two strands pulls back with ${say(state, 'strandForce')}. A dial on a bar is clamped to the upper strand. A bar shows the stress, and under it the range in use on small mills.`;
}

function notes({ values, system, narrow }: State): readonly string[] {
  const { low, high } = OTTERSLEIGH.threadFriction;
  const range = formatRange(values.stressLow, values.stressHigh, 'stress', system);
  return [
    `an invented mill, ${OTTERSLEIGH.place}; loop to scale, screw, handle, dial and section larger`,
    `the wheel’s movement is drawn × ${millLayout(narrow).times}, the frame’s give is not drawn`,
    `the friction in the thread is a guess: from ${low} to ${high} the stress is ${range}`,
    'usual stress: common practice, no source',
  ];
}

/** What this view is, on a wide sheet; and on a screen, what to do with it. */
function HandleWords({ end: { x, y, reach }, narrow }: Pick<MillLayout, 'end' | 'narrow'>) {
  const top = y - reach - 28;
  const invitation = narrow
    ? ({ x: x - reach - 8, y: y - reach + 4, anchor: 'end' } as const)
    : ({ x, y: top, anchor: 'middle' } as const);
  return (
    <g>
      {!narrow && (
        <text class="note" x={x} y={top - 20} text-anchor="middle">
          the handle from outside
        </text>
      )}
      <text
        class="hand needs-script no-print"
        x={invitation.x}
        y={invitation.y}
        text-anchor={invitation.anchor}
      >
        turn it
      </text>
    </g>
  );
}

/** The handle from outside, with the grip that turns it. */
function Turned({ state, layout }: { readonly state: State; readonly layout: MillLayout }) {
  const { end, beam, perTorque, narrow } = layout;
  const { turns, torque, torquePerTurn } = state.values;
  const grip = turned(end, end.reach, turns);
  return (
    <g>
      <HandleWords end={end} narrow={narrow} />
      <EndHandle
        centre={end}
        reach={end.reach}
        hub={beam * 0.9}
        turns={turns}
        push={torque * perTorque}
      />
      <Handle
        model={titleMill}
        state={state}
        x={grip.x}
        y={grip.y}
        input="torque"
        label="Turn the handle"
        drag="turn"
        perUnit={torquePerTurn / (2 * Math.PI)}
        centreX={end.x}
        centreY={end.y}
        angle={360 * turns}
      />
    </g>
  );
}

function Drawing(state: State) {
  const layout = millLayout(state.narrow);
  const { values, idPrefix, system } = state;
  const wheel = wheelAt(layout, values.wheelTravel);
  return (
    <Sheet idPrefix={idPrefix} size={layout}>
      <Loop layout={layout} wheel={wheel} />
      <Tensioner layout={layout} id={`${idPrefix}-plate`} wheel={wheel} turns={values.turns} />
      <Gauge layout={layout} system={system} reading={values.stretch} />
      {!state.narrow && <BandSection layout={layout} system={system} id={`${idPrefix}-section`} />}
      <StressScale place={layout.stress} stress={values.stress} system={system} />
      <Callouts state={state} layout={layout} wheel={wheel} />
      <Turned state={state} layout={layout} />
    </Sheet>
  );
}

/** The drawing of the home page. */
export const figure: FigureModule<typeof titleMill> = { finding, description, notes, Drawing };
