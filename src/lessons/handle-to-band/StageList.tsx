/**
 * The stages of the chain as the item list of a drawing, each with how its number comes to be known: a full line and a
 * rule for what can be measured, a hidden line for what can only be inferred.
 * Units: SI in the values; drawing units.
 */

import { teller } from '../../figures/teller.ts';
import type { QuantityOf } from '../../models/define-model.ts';
import { handleToBand } from './model.ts';
import type { State } from './state.ts';
import { isStageShown, type TurnLayout } from './turn-layout.ts';

const tell = teller(handleToBand);

interface Stage {
  readonly name: QuantityOf<typeof handleToBand>;
  readonly words: string;
  readonly short: string;
  readonly measured: boolean;
  readonly how: string;
  readonly ink: 'ink' | 'hand' | 'steel';
}

const STAGES: readonly Stage[] = [
  {
    name: 'torque',
    words: 'torque on the handle',
    short: 'handle torque',
    measured: true,
    how: 'torque wrench',
    ink: 'hand',
  },
  {
    name: 'thrust',
    words: 'thrust of the screw',
    short: 'screw thrust',
    measured: false,
    how: 'friction decides',
    ink: 'ink',
  },
  {
    name: 'wheelForce',
    words: 'force on the wheel',
    short: 'wheel force',
    measured: false,
    how: 'here the thrust',
    ink: 'ink',
  },
  {
    name: 'strandForce',
    words: 'force in one strand',
    short: 'strand force',
    measured: false,
    how: 'half of the wheel’s',
    ink: 'steel',
  },
  {
    name: 'stress',
    words: 'stress in the steel',
    short: 'stress',
    measured: false,
    how: 'force over section',
    ink: 'steel',
  },
  {
    name: 'stretch',
    words: 'stretch on the dial',
    short: 'stretch',
    measured: true,
    how: 'dial and clamps',
    ink: 'steel',
  },
];

/** A little rule where a thing can be measured, an empty hidden outline where it cannot. */
function Mark({ x, y, measured }: { readonly x: number; readonly y: number; measured: boolean }) {
  const frame = `M${x} ${y - 9}h16v9h-16z`;
  return measured ? (
    <path class="thin" d={`${frame}m4 0v4m4 -4v6m4 -6v4`} />
  ) : (
    <path class="hidden-edge" d={frame} />
  );
}

const verdict = (measured: boolean) =>
  measured ? 'you can measure this' : 'you can only infer it';

interface ListProps {
  readonly state: State;
  readonly layout: TurnLayout;
}

function Row({ state, layout, stage, place }: ListProps & { stage: Stage; place: number }) {
  const { list, narrow } = layout;
  const y = list.top + (place + 1) * list.row;
  const base = y - list.row * 0.3;
  const { name, words, short, measured, how, ink } = stage;
  const tail = narrow ? verdict(measured) : `${verdict(measured)}: ${how}`;
  return (
    <g data-sym={name}>
      <path class="grid" d={`M0 ${y}H${list.right}`} />
      <text class={ink} x={2} y={base} font-weight="600">
        {place + 1}
      </text>
      <text class={ink} x={narrow ? 16 : 20} y={base}>
        {narrow ? short : words}
      </text>
      {narrow && (
        <text class={ink} x={186} y={base} text-anchor="end">
          {tell(state, name)}
        </text>
      )}
      <Mark x={narrow ? 202 : 162} y={base} measured={measured} />
      <text class={measured ? '' : 'note'} x={narrow ? 226 : 188} y={base}>
        {tail}
      </text>
    </g>
  );
}

/** The list, under a thick line like a table's head. */
export function StageList({ state, layout }: ListProps) {
  const { top, right } = layout.list;
  return (
    <g>
      <path class="outline" d={`M0 ${top}H${right}`} />
      {STAGES.filter((_, place) => isStageShown(state, place + 1)).map((stage, place) => (
        <Row key={stage.name} state={state} layout={layout} stage={stage} place={place} />
      ))}
    </g>
  );
}
