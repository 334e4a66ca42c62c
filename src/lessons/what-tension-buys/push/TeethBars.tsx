/**
 * How far the push moves the teeth, as bars on one scale: for each tension one with the reader's guide spacing, and
 * thin one with half of it; the bow pale, the twist full.
 * Units: SI in the state; drawing units otherwise.
 */
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { State } from '../state.ts';
import type { PushLayout } from './layout.ts';
import type { Pushed } from './pushed-span.ts';
import { type Row, rowsOf } from './rows.ts';

const THIN = 2.4; // times thinner: the bars of the closer guides

interface PartProps {
  readonly state: State;
  readonly layout: PushLayout;
}

/** Bow and twist end to end, with their sum. */
function Bar({
  state,
  layout,
  pushed,
  y,
  isCloser,
}: PartProps & { readonly pushed: Pushed; readonly y: number; readonly isCloser: boolean }) {
  const { left, perMovement, thick } = layout.bars;
  const [bow, teeth] = [pushed.bow * perMovement, pushed.teeth * perMovement];
  const height = isCloser ? thick / THIN : thick;
  const top = y + (thick - height) / 2;
  return (
    <g>
      <rect class="steel-wash" x={left} y={top} width={bow} height={height} />
      <rect class="steel-fill" x={left + bow} y={top} width={teeth - bow} height={height} />
      <rect class="thin" x={left} y={top} width={teeth} height={height} />
      <text class="steel" x={left + teeth + 8} y={y + thick - (layout.narrow ? 0 : 1)}>
        {formatQuantity(pushed.teeth, 'length', state.system, { digits: 2 })}
      </text>
    </g>
  );
}

/** What pale, full and thin mean; in the drawing above, the closer guides are dashed. */
function Key({ state, layout }: PartProps) {
  const { left, key, thick } = layout.bars;
  const { narrow } = layout;
  const y = key - thick + 1;
  const twist = left + (narrow ? 58 : 74);
  const closerAt = twist + (narrow ? 66 : 78);
  const closer = formatQuantity(state.values.closerSpan, 'length', state.system);
  return (
    <g>
      <rect class="steel-wash" x={left} y={y} width={18} height={thick} />
      <rect class="thin" x={left} y={y} width={18} height={thick} />
      <text class="note" x={left + 24} y={key}>
        bow
      </text>
      <rect class="steel-fill" x={twist} y={y} width={18} height={thick} />
      <text class="note" x={twist + 24} y={key}>
        twist
      </text>
      <rect class="thin" x={closerAt} y={y + thick / 2} width={18} height={thick / THIN} />
      <path class="hidden-edge" d={`M${closerAt} ${y + 2}h20`} />
      <text class="note" x={closerAt + 24} y={key}>
        {narrow ? '' : 'guides '}
        {closer}
        {narrow ? '' : ' apart'}
      </text>
    </g>
  );
}

function Group({
  state,
  layout,
  row,
  top,
}: PartProps & { readonly row: Row; readonly top: number }) {
  const { left, step, thick } = layout.bars;
  return (
    <g>
      <text
        class={row.key === 'own' ? 'hand' : ''}
        x={left - 8}
        y={top + thick + step / 2 - 1}
        text-anchor="end"
      >
        {formatQuantity(row.stress, 'stress', state.system)}
      </text>
      <Bar state={state} layout={layout} pushed={row.wide} y={top} isCloser={false} />
      <Bar state={state} layout={layout} pushed={row.close} y={top + step} isCloser />
    </g>
  );
}

/** Key and bars. */
export function TeethBars({ state, layout }: PartProps) {
  const { top, group, left, step, thick } = layout.bars;
  return (
    <g data-sym="teeth">
      <Key state={state} layout={layout} />
      {rowsOf(state.values).map((row, place) => (
        <Group key={row.key} state={state} layout={layout} row={row} top={top + place * group} />
      ))}
      <path class="axis" d={`M${left} ${top - 3}V${top + 2 * group + step + thick + 3}`} />
    </g>
  );
}
