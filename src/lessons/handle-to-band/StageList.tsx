/**
 * The stages of the chain with their numbers: on a wide sheet each where it is on the mill, on a phone as a list beside
 * the handle; and which of them can be measured.
 * Units: SI in the values; drawing units.
 */
import { type Callout, Callouts } from '../../figures/mill/Callouts.tsx';
import { type Stage, type StagePlace, stagePlaces } from '../../figures/mill/stage-places.ts';
import { teller } from '../../figures/teller.ts';
import { handleToBand } from './model.ts';
import { isChainShown, stagesShown } from './stages.ts';
import type { State } from './state.ts';
import type { TurnedMill } from './turn-layout.ts';

const tell = teller(handleToBand);

/** Where the stages are on the mill of this figure. */
export function placesOn({ mill, wheel }: TurnedMill): Readonly<Record<Stage, StagePlace>> {
  const { axis, radius, beam, left, narrow, end } = mill;
  const usual = stagePlaces(mill, wheel);
  const under = axis + radius;
  const stress = { x: left + 30, y: under + (narrow ? 18 : 21), anchor: 'start' } as const;
  if (narrow) return { ...usual, stress };
  return {
    ...usual,
    stress,
    torque: { ...usual.torque, x: end.x },
    thrust: { ...usual.thrust, x: usual.thrust.x + 28, anchor: 'middle' },
    wheelForce: { x: mill.right - radius - 6, y: axis + beam + 32, anchor: 'end' },
  };
}

interface StagesProps {
  readonly state: State;
  readonly turned: TurnedMill;
}

/** The numerals on the mill; on a wide sheet with names and numbers. */
export function Stages({ state, turned }: StagesProps) {
  const at = placesOn(turned);
  const callouts = stagesShown(state).map(
    ({ stage, words, ink }): Callout => ({
      stage,
      ink,
      place: at[stage],
      words: state.narrow ? undefined : `${words} ${tell(state, stage)}`,
    }),
  );
  const { x, y } = at.wheelForce;
  const { axis, beam } = turned.mill;
  const isLed = !state.narrow && callouts.some(({ stage }) => stage === 'wheelForce');
  return (
    <g>
      {isLed && <path class="thin" d={`M${x + 5} ${y - 5}L${turned.wheel} ${axis + beam * 0.5}`} />}
      <Callouts layout={turned.mill} callouts={callouts} />
    </g>
  );
}

const LIST = { top: 156, row: 17, name: 17, number: 164, tool: 173 };

/** The list of a phone; the numbers are lines of their own, so that nothing else is set anew as they change. */
export function StageList({ state }: { readonly state: State }) {
  return (
    <g>
      {stagesShown(state).map(({ stage, words, ink, tool }, place) => {
        const y = LIST.top + place * LIST.row;
        return (
          <g key={stage} data-sym={stage}>
            <text class={ink} y={y}>
              <tspan class="numeral">{place + 1}</tspan>
              <tspan x={LIST.name}>{words}</tspan>
              <tspan x={LIST.tool}>{tool ? `by ${tool}` : 'calculated'}</tspan>
            </text>
            <text class={ink} x={LIST.number} y={y} text-anchor="end">
              {tell(state, stage)}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** What of the chain can be measured, in the free corner of a wide sheet, once all of it is there. */
export function MeasuredWords({ state }: { readonly state: State }) {
  if (!isChainShown(state)) return null;
  return (
    <g>
      <text x={0} y={16}>
        You can measure 1 by wrench and 6 by dial.
      </text>
      <text class="note" x={0} y={37}>
        You can only calculate 2 to 5.
      </text>
    </g>
  );
}
