/**
 * The band between its guides, swinging; the stress as an arrow at either end. The span is true to scale, the swing is not.
 * What swings has the class `swing` and turns about its own line at rest.
 * Units: SI in the state; drawing units otherwise.
 */
import { Dimension } from '../../../figures/dimension.tsx';
import { ForceArrow } from '../../../figures/ForceArrow.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { secondOpinion } from '../model.ts';
import type { State } from '../state.ts';
import type { PluckLayout } from './layout.ts';

const BEYOND = 16; // drawing units of band beyond a guide
const POINTS = 24;
const GRIP_ASIDE = 16; // right of the guide, so that a short span still shows its length

interface PartProps {
  readonly state: State;
  readonly layout: PluckLayout;
}

/** Half a wave over a length, so high; down the sheet where that is negative. */
function halfWave(left: number, length: number, height: number): string {
  const points = Array.from({ length: POINTS + 1 }, (_, place) => {
    const share = place / POINTS;
    return `${(left + share * length).toFixed(1)} ${(-height * Math.sin(Math.PI * share)).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

/** A roller on either side of the band. */
function Guide({ x, layout }: { readonly x: number; readonly layout: PluckLayout }) {
  const { rest, roller } = layout;
  return (
    <g>
      {[-1, 1].map((side) => (
        <circle
          key={side}
          class="outline paper-fill"
          cx={x}
          cy={rest + side * (roller + 1)}
          r={roller}
        />
      ))}
    </g>
  );
}

/** The stress that pulls at both ends. */
function Pull({ state, layout, right }: PartProps & { readonly right: number }) {
  const { left, rest, perStress } = layout;
  const length = 8 + state.values.stress * perStress;
  return (
    <g data-sym="stress">
      <ForceArrow x={left - BEYOND - 4} y={rest} length={-length} ink="hand" />
      <ForceArrow x={right + BEYOND + 4} y={rest} length={length} ink="hand" />
    </g>
  );
}

/** The swinging span with its guides, its arrows and its length. */
export function SwingingSpan({ state, layout }: PartProps) {
  const { left, perLength, rest, swing, roller } = layout;
  const { span } = state.values;
  const right = left + span * perLength;
  const below = rest + Math.max(swing, 2 * roller) + 22;
  return (
    <g>
      <g transform={`translate(0 ${rest})`}>
        <path class="steel-line" d={`M${left - BEYOND} 0H${left}M${right} 0H${right + BEYOND}`} />
        <path class="construction" d={`M${left} 0H${right}`} />
        <path class="hidden-edge" d={halfWave(left, right - left, -swing)} />
        <path class="steel-line swing" d={halfWave(left, right - left, swing)} />
      </g>
      <Guide x={left} layout={layout} />
      <Guide x={right} layout={layout} />
      <Pull state={state} layout={layout} right={right} />
      <Dimension
        from={left}
        to={right}
        y={below}
        edge={rest + 2 * roller + 4}
        text={formatQuantity(span, 'length', state.system)}
        ink="hand"
        id="span"
      />
      <Handle
        model={secondOpinion}
        state={state}
        x={right + GRIP_ASIDE}
        y={below}
        input="span"
        label="Move the guide"
        drag="x"
        perUnit={1 / perLength}
      />
    </g>
  );
}
