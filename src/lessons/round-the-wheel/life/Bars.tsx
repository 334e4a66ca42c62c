/**
 * What each change makes of the band's life, as bars from today's life on one scale of doublings and halvings.
 * Units: ratios; drawing units.
 */
import type { State } from '../state.ts';
import type { LifeLayout } from './layout.ts';
import { type LifeRow, lifeRows, lifeWords } from './rows.ts';

const MOST = 3; // doublings, or halvings
const DOUBLINGS = [-3, -2, -1, 0, 1, 2, 3];
const ROWS = [0, 1, 2];

interface PartProps {
  readonly state: State;
  readonly layout: LifeLayout;
}

/** What a tick of the scale is called. */
function tickWords(doublings: number): string {
  if (doublings === 0) return 'today';
  return doublings < 0 ? `1/${2 ** -doublings}` : `${2 ** doublings} ×`;
}

/** The scale, with a line for each doubling beside every bar. */
function LifeScale({ layout }: Pick<PartProps, 'layout'>) {
  const { bars, scale } = layout;
  const x = (doublings: number) => bars.today + doublings * bars.perDoubling;
  const besideBars = ROWS.map((row) => `M0 ${bars.first + row * bars.row - 3}v${bars.thick + 6}`);
  return (
    <g>
      {DOUBLINGS.map((tick) => (
        <g key={tick} transform={`translate(${x(tick)} 0)`}>
          <path class={tick === 0 ? 'outline' : 'grid'} d={besideBars.join('')} />
          <path class="axis" d={`M0 ${scale.y}v5`} />
          <text class="note" y={scale.y + 22} text-anchor="middle">
            {tickWords(tick)}
          </text>
        </g>
      ))}
      <path class="axis" d={`M${x(-MOST)} ${scale.y}H${x(MOST)}`} />
      <text class="note" x={x(-MOST)} y={scale.y + scale.words}>
        ← shorter life
      </text>
      <text class="note" x={x(MOST)} y={scale.y + scale.words} text-anchor="end">
        longer life →
      </text>
    </g>
  );
}

/** A bar from today's life, with what it comes to at its end. */
function Bar({
  row,
  top,
  state,
  layout,
}: PartProps & { readonly row: LifeRow; readonly top: number }) {
  const { today, perDoubling, thick } = layout.bars;
  const length = Math.log2(row.life) * perDoubling;
  const isShorter = length < 0;
  return (
    <g>
      <rect
        class="steel-fill"
        x={Math.min(today, today + length)}
        y={top}
        width={Math.abs(length)}
        height={thick}
      />
      <g transform={`translate(${today + length} ${top + thick / 2 + 5})`}>
        <text class="steel halo" x={isShorter ? -7 : 7} text-anchor={isShorter ? 'end' : 'start'}>
          {lifeWords(row.life, state.system)}
        </text>
      </g>
    </g>
  );
}

/** Rows and scale. */
export function Bars({ state, layout }: PartProps) {
  const { bars, words } = layout;
  return (
    <g>
      <LifeScale layout={layout} />
      {lifeRows(state).map((row, place) => {
        const top = bars.first + place * bars.row;
        const line = words.lines === 2 ? top + 10 : top - words.over;
        return (
          <g key={row.name}>
            <text x={words.x} y={line}>
              {row.name}
            </text>
            <text
              class="hand halo"
              x={words.lines === 2 ? words.x : words.x + 74}
              y={words.lines === 2 ? line + 19 : line}
            >
              {row.sizes}
            </text>
            <Bar row={row} top={top} state={state} layout={layout} />
          </g>
        );
      })}
    </g>
  );
}
