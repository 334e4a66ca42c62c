/**
 * What the band is stretched and what the dial shows, as two bars on one scale, each with the stress that it means.
 * Units: SI in the state; drawing units otherwise.
 */
import { linearScale } from '../../../figures/scale.ts';
import { teller } from '../../../figures/teller.ts';
import { aFewHundredths } from '../model.ts';
import type { State } from '../state.ts';
import type { RigLayout } from './layout.ts';

const MOST = 0.3e-3; // m, more than any fault makes the dial show
const HEIGHT = 14;
const say = teller(aFewHundredths);

interface RowProps {
  readonly layout: RigLayout;
  readonly y: number;
  readonly length: number;
  readonly name: string;
  readonly text: string;
  readonly isTrue: boolean;
}

/** A bar with its name before it and its numbers behind it; on a phone both are above it. */
function Row({ layout, y, length, name, text, isTrue }: RowProps) {
  const { narrow, bars } = layout;
  const x = linearScale([0, MOST], [bars.left, bars.right]);
  const ink = isTrue ? 'steel' : undefined;
  return (
    <g>
      <text
        x={narrow ? bars.left : bars.left - 12}
        y={narrow ? y - 8 : y + 12}
        text-anchor={narrow ? 'start' : 'end'}
      >
        {name}
      </text>
      <text
        class={ink}
        x={bars.right}
        y={narrow ? y - 8 : y + 12}
        dx={narrow ? 0 : 24}
        text-anchor={narrow ? 'end' : 'start'}
      >
        {text}
      </text>
      <rect
        class={isTrue ? 'steel-fill' : 'ink-fill'}
        x={bars.left}
        y={y}
        width={x(length) - bars.left}
        height={HEIGHT}
      />
    </g>
  );
}

/** Both bars; on the second a line where the first one ends. */
export function Comparison({
  state,
  layout,
}: {
  readonly state: State;
  readonly layout: RigLayout;
}) {
  const { rigStretch, rigShown } = state.values;
  const { left, right, rows } = layout.bars;
  const x = linearScale([0, MOST], [left, right]);
  const [upper, lower] = rows;
  return (
    <g>
      <Row
        layout={layout}
        y={upper}
        length={rigStretch}
        name="the band is stretched"
        text={`${say(state, 'rigStretch')}: ${say(state, 'rigStress')}`}
        isTrue
      />
      <Row
        layout={layout}
        y={lower}
        length={rigShown}
        name="the dial has moved"
        text={`${say(state, 'rigShown')}: ${say(state, 'saidStress')}`}
        isTrue={false}
      />
      <path class="construction" d={`M${x(rigStretch)} ${lower - 2}V${lower + HEIGHT + 8}`} />
    </g>
  );
}
