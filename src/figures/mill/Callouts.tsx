/**
 * The chain on the drawing of the title page: a numeral at each stage, beside it on a wide sheet the number itself.
 * Units: SI in the values; drawing units.
 */
import type { QuantityOf } from '../../models/define-model.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { titleMill } from '../../models/mills/title-mill.ts';
import { ArrowHead } from '../dimension.tsx';
import type { FigureState } from '../figure.ts';
import { teller } from '../teller.ts';
import type { MillLayout } from './layout.ts';

const tell = teller(titleMill);

interface Callout {
  readonly name: QuantityOf<typeof titleMill>;
  readonly x: number;
  readonly y: number;
  readonly ink: 'ink' | 'hand' | 'steel';
  readonly anchor: 'start' | 'middle' | 'end';
  readonly words?: string;
}

/** From the screw down to the line that names it, clear of the wheel. */
function screwLeader({ right, radius, axis, beam, narrow }: MillLayout) {
  const x = right + radius + (narrow ? 9 : 14);
  return { x, from: axis + beam * 0.22, to: axis + beam * (narrow ? 2.4 : 2.6) };
}

/** Where each stage of the chain is named, in its order. */
function callouts(layout: MillLayout): readonly Callout[] {
  const { right, axis, radius, beam, handle, middle, narrow, section } = layout;
  const leader = screwLeader(layout);
  const middleWhenNarrow = narrow ? 'middle' : 'start';
  const tip = section.left + OTTERSLEIGH.widthOverTeeth * section.scale;
  const top = axis - radius;
  return [
    {
      name: 'torque',
      x: handle + 8,
      y: axis - beam * 2.1 - 12,
      ink: 'hand',
      anchor: narrow ? 'end' : 'middle',
    },
    {
      name: 'thrust',
      x: leader.x,
      y: leader.to + 16,
      ink: 'ink',
      anchor: middleWhenNarrow,
      words: 'in the screw',
    },
    {
      name: 'wheelForce',
      x: right,
      y: axis - beam - 11,
      ink: 'ink',
      anchor: 'middle',
    },
    {
      name: 'strandForce',
      x: right + 10,
      y: top - 4,
      ink: 'steel',
      anchor: 'start',
    },
    {
      name: 'stress',
      x: tip + 12,
      y: section.y + 5,
      ink: 'steel',
      anchor: 'start',
      words: 'in the steel',
    },
    {
      name: 'stretch',
      x: middle + (narrow ? 22 : 84),
      y: top - (narrow ? 25 : 26),
      ink: 'steel',
      anchor: middleWhenNarrow,
      words: 'on the dial',
    },
  ];
}

/** The pull of the two strands on the movable wheel. */
function PullArrows({ layout: { right, axis, radius, narrow } }: { readonly layout: MillLayout }) {
  const length = narrow ? 26 : 70;
  const offset = narrow ? 7 : 10;
  return (
    <g>
      {[axis - radius - offset, axis + radius + offset].map((y) => (
        <g key={y}>
          <path class="steel-line" d={`M${right} ${y}H${right - length + 8}`} />
          <ArrowHead x={right - length} y={y} angle={180} ink="steel" size={narrow ? 8 : 11} />
        </g>
      ))}
    </g>
  );
}

interface MillCalloutsProps {
  readonly state: FigureState<typeof titleMill>;
  readonly layout: MillLayout;
}

/** Numerals, numbers and the two arrows of the strands. */
export function Callouts({ state, layout }: MillCalloutsProps) {
  const { narrow } = state;
  const { x, from, to } = screwLeader(layout);
  const say = ({ name, words = '' }: Callout) => `${tell(state, name)} ${words}`.trimEnd();
  return (
    <g>
      <PullArrows layout={layout} />
      <path class="thin" d={`M${x} ${from}V${to}`} />
      {callouts(layout).map((callout, place) => (
        <text
          key={callout.name}
          class={`halo ${callout.ink}`}
          x={callout.x}
          y={callout.y}
          text-anchor={callout.anchor}
        >
          <tspan class="numeral">{place + 1}</tspan>
          {!narrow && <tspan dx={7}>{say(callout)}</tspan>}
        </text>
      ))}
    </g>
  );
}
