/**
 * The chain on the drawing of the title page: a numeral at each stage, beside it on a wide sheet the number itself.
 * Units: SI in the values; drawing units.
 */
import { formatQuantity } from '../units/format-quantity.ts';
import type { QuantityKind } from '../units/kinds.ts';
import { ArrowHead } from './dimension.tsx';
import type { FigureState } from './figure.ts';
import type { MillLayout } from './mill-layout.ts';

type Ink = 'ink' | 'hand' | 'steel';

interface Callout {
  readonly stage: number;
  readonly x: number;
  readonly y: number;
  readonly name: string;
  readonly kind: QuantityKind;
  readonly words: string;
  readonly ink: Ink;
  readonly anchor?: 'start' | 'middle' | 'end';
}

function callouts(layout: MillLayout): readonly Callout[] {
  const { left, right, axis, radius, beam, plate, handle, middle, narrow, section } = layout;
  const gap = narrow ? 14 : 12;
  const tip = section.left + 0.035 * section.scale;
  return [
    {
      stage: 1,
      x: handle,
      y: axis - beam * 2.1 - gap,
      name: 'torque',
      kind: 'torque',
      words: '',
      ink: 'hand',
      anchor: narrow ? 'middle' : 'end',
    },
    {
      stage: 2,
      x: plate - beam * 0.6,
      y: axis + beam + gap + 10,
      name: 'thrust',
      kind: 'force',
      words: 'in the screw',
      ink: 'ink',
      anchor: narrow ? 'middle' : 'start',
    },
    {
      stage: 3,
      x: right,
      y: axis - beam - gap,
      name: 'wheelForce',
      kind: 'force',
      words: '',
      ink: 'ink',
      anchor: 'middle',
    },
    {
      stage: 4,
      x: right - radius * 0.25,
      y: axis - radius - gap - 8,
      name: 'strandForce',
      kind: 'force',
      words: '',
      ink: 'steel',
      anchor: 'middle',
    },
    {
      stage: 5,
      x: tip + gap,
      y: section.y + 5,
      name: 'stress',
      kind: 'stress',
      words: 'in the steel',
      ink: 'steel',
      anchor: 'start',
    },
    {
      stage: 6,
      x: middle + (narrow ? 16 : 20),
      y: axis - radius - (narrow ? 26 : 48),
      name: 'stretch',
      kind: 'stretch',
      words: 'on the dial',
      ink: 'steel',
      anchor: 'start',
    },
  ];
}

function pullArrows({ right, axis, radius, narrow }: MillLayout) {
  const length = narrow ? 26 : 70;
  const offset = narrow ? 7 : 10;
  return [axis - radius - offset, axis + radius + offset].map((y) => (
    <g key={y}>
      <path class="steel-line" d={`M${right} ${y}H${right - length + 8}`} />
      <ArrowHead x={right - length} y={y} angle={180} ink="steel" size={narrow ? 8 : 11} />
    </g>
  ));
}

/** Numerals, numbers and the two arrows of the strands. */
export function MillCallouts({
  state,
  layout,
}: {
  readonly state: FigureState;
  readonly layout: MillLayout;
}) {
  const { values, system, narrow } = state;
  return (
    <g>
      {pullArrows(layout)}
      {callouts(layout).map(({ stage, x, y, name, kind, words, ink, anchor }) => (
        <text key={name} class={`halo ${ink}`} x={x} y={y} text-anchor={anchor} data-sym={name}>
          <tspan class="numeral">{stage}</tspan>
          {!narrow && `  ${formatQuantity(values[name] ?? 0, kind, system)} ${words}`.trimEnd()}
        </text>
      ))}
    </g>
  );
}
