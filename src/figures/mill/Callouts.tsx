/**
 * The chain on the drawing of the title page: a numeral at each stage, beside it the number
 * itself, on a phone only where the reader looks first.
 * Units: SI in the values; drawing units.
 */
import type { QuantityOf } from '../../models/define-model.ts';
import { OTTERSLEIGH } from '../../models/mills/ottersleigh.ts';
import { titleDigits, titleInk, titleMill } from '../../models/mills/title-mill.ts';
import { ForceArrow } from '../ForceArrow.tsx';
import type { FigureState } from '../figure.ts';
import { teller } from '../teller.ts';
import type { MillLayout } from './layout.ts';

const tell = teller(titleMill);

interface Callout {
  readonly name: QuantityOf<typeof titleMill>;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** What is written behind the numeral: nothing, the number, the number and these words. */
  readonly words?: string;
}

/** From the screw down to the line that names it, clear of the wheel. */
function screwLeader({ plate, axis, beam, narrow }: MillLayout) {
  return {
    x: plate - (narrow ? 6 : 12),
    from: axis + beam * 0.22,
    to: axis + beam * (narrow ? 2.6 : 3.9),
  };
}

/** Where the stages of the chain are named on a wide sheet, in their order. */
function wideCallouts(layout: MillLayout, wheel: number): readonly Callout[] {
  const { axis, radius, beam, middle, scale, dial, end, stress } = layout;
  const leader = screwLeader(layout);
  const top = axis - radius;
  const dialEdge = middle + (OTTERSLEIGH.gaugeLength / 2) * scale;
  return [
    { name: 'torque', x: end.x + 20, y: end.y + end.reach + 40, anchor: 'middle', words: '' },
    { name: 'thrust', x: leader.x - 10, y: leader.to + 17, anchor: 'start', words: 'in the screw' },
    { name: 'wheelForce', x: wheel, y: axis - beam - 11, anchor: 'middle', words: '' },
    { name: 'strandForce', x: wheel + 10, y: top - 4, anchor: 'start', words: 'in each strand' },
    { name: 'stress', x: stress.left, y: stress.top - 9, anchor: 'start', words: 'in the steel' },
    {
      name: 'stretch',
      x: dialEdge + 10,
      y: top - dial - 14,
      anchor: 'start',
      words: 'on the dial',
    },
  ];
}

/** The same on a phone, where three of them are a numeral only. */
function narrowCallouts(layout: MillLayout, wheel: number): readonly Callout[] {
  const { axis, radius, beam, middle, scale, dial, end, handle, stress } = layout;
  const leader = screwLeader(layout);
  const top = axis - radius;
  const dialEdge = middle + (OTTERSLEIGH.gaugeLength / 2) * scale;
  return [
    { name: 'torque', x: handle, y: axis - end.reach - 8, anchor: 'middle', words: '' },
    { name: 'thrust', x: leader.x, y: leader.to + 16, anchor: 'middle' },
    { name: 'wheelForce', x: wheel, y: axis - beam - 7, anchor: 'middle' },
    { name: 'strandForce', x: wheel + 8, y: top - 3, anchor: 'start' },
    { name: 'stress', x: stress.left, y: stress.top - 8, anchor: 'start', words: 'in the steel' },
    { name: 'stretch', x: dialEdge + 7, y: top - dial - 6, anchor: 'start', words: '' },
  ];
}

interface PartProps {
  readonly state: FigureState<typeof titleMill>;
  readonly layout: MillLayout;
  /** Where the movable wheel's centre stands now. */
  readonly wheel: number;
}

/** The pull of the two strands on the movable wheel, as long as it is strong. */
function PullArrows({ state, layout: { axis, radius, narrow, perForce }, wheel }: PartProps) {
  const offset = narrow ? 7 : 10;
  return (
    <g data-sym="strandForce">
      {[axis - radius - offset, axis + radius + offset].map((y) => (
        <ForceArrow
          key={y}
          x={wheel}
          y={y}
          length={-state.values.strandForce * perForce}
          ink="steel"
          head={narrow ? 8 : 11}
        />
      ))}
    </g>
  );
}

/** Numerals, numbers and the two arrows of the strands. */
export function Callouts(props: PartProps) {
  const { state, layout, wheel } = props;
  const { x, from, to } = screwLeader(layout);
  const callouts = layout.narrow ? narrowCallouts(layout, wheel) : wideCallouts(layout, wheel);
  const say = (name: Callout['name'], words: string) =>
    `${tell(state, name, titleDigits(name))} ${words}`.trimEnd();
  return (
    <g>
      <PullArrows {...props} />
      <path class="thin" d={`M${x} ${from}V${to}`} />
      {callouts.map(({ name, x: at, y, anchor, words }, place) => (
        <text
          key={name}
          class={`halo ${titleInk(name)}`}
          x={at}
          y={y}
          text-anchor={anchor}
          data-sym={name}
        >
          <tspan class="numeral">{place + 1}</tspan>
          {words !== undefined && <tspan dx={7}>{say(name, words)}</tspan>}
        </text>
      ))}
    </g>
  );
}
