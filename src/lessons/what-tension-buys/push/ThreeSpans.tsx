/**
 * Three spans of one band at three tensions under the same push, each seen from the front, end-on, and in the board that
 * it leaves; a line from the teeth to the board carries the height across.
 * Units: SI in the state; drawing units otherwise.
 */
import { Dimension } from '../../../figures/dimension.tsx';
import { Handle } from '../../../figures/Handle.tsx';
import { teller } from '../../../figures/teller.ts';
import { formatQuantity } from '../../../units/format-quantity.ts';
import { whatTensionBuys } from '../model.ts';
import type { State } from '../state.ts';
import { Board } from './Board.tsx';
import { EndOn, tipOf } from './EndOn.tsx';
import { FromTheFront } from './FromTheFront.tsx';
import type { PushLayout } from './layout.ts';
import { type Row, rowsOf } from './rows.ts';

const ASIDE = 26; // from the guide to the grip that moves it
const say = teller(whatTensionBuys);

interface PartProps {
  readonly state: State;
  readonly layout: PushLayout;
}

/** A row's tension, in words: on a phone the number alone. */
function named({ key, stress }: Row, { system, narrow }: State): string {
  const text = formatQuantity(stress, 'stress', system);
  if (narrow) return text;
  return { own: `your ${text}`, half: `half: ${text}`, quarter: `a quarter: ${text}` }[key];
}

function Titles({ layout }: Pick<PartProps, 'layout'>) {
  const { middle, section, board, titles } = layout;
  const columns = [
    { x: middle, text: 'from the front' },
    { x: section, text: 'end-on' },
    { x: (board.left + board.right) / 2, text: 'the sawn face' },
  ];
  return (
    <g>
      {columns.map(({ x, text }) => (
        <text key={text} class="note" x={x} y={titles} text-anchor="middle">
          {text}
        </text>
      ))}
    </g>
  );
}

function Span({
  state,
  layout,
  row,
  rest,
}: PartProps & { readonly row: Row; readonly rest: number }) {
  const { board, middle, perMovement, words } = layout;
  const level = rest - row.wide.teeth * perMovement;
  const share = formatQuantity(row.wide.twistShare, 'percent', state.system, { digits: 2 });
  return (
    <g>
      <path class="grid" d={`M${layout.narrow ? 160 : 366} ${rest}H${board.left}`} />
      <path class="construction" d={`M${middle} ${level}H${(board.left + board.right) / 2}`} />
      <FromTheFront row={row} layout={layout} rest={rest} />
      <EndOn row={row} layout={layout} rest={rest} />
      <Board row={row} layout={layout} rest={rest} />
      <text
        class={row.key === 'own' ? 'hand' : ''}
        x={layout.narrow ? 4 : 16}
        y={rest + words}
        data-sym={row.key === 'own' ? 'stress' : undefined}
      >
        {named(row, state)}
      </text>
      <text class="steel" x={tipOf(layout) - 10} y={rest + words} text-anchor="end">
        {share} twist
      </text>
      {row.key === 'own' && (
        <text x={middle + 8} y={rest + words}>
          {say(state, 'push', 2)}
        </text>
      )}
    </g>
  );
}

/** The guide spacing, with the grip that moves the guides. */
function Spacing({ state, layout }: PartProps) {
  const { middle, perLength, spacing, rests, roller } = layout;
  const half = (state.values.span * perLength) / 2;
  return (
    <g>
      <Dimension
        from={middle - half}
        to={middle + half}
        y={spacing}
        edge={rests[0] - 2 * roller - 4}
        text={say(state, 'span')}
        ink="hand"
        id="span"
      />
      <Handle
        model={whatTensionBuys}
        state={state}
        x={middle + half + ASIDE}
        y={spacing}
        input="span"
        label="Move the guides"
        drag="x"
        perUnit={2 / perLength}
      />
    </g>
  );
}

/** The three rows, and the spacing under them. */
export function ThreeSpans({ state, layout }: PartProps) {
  return (
    <g>
      {!layout.narrow && <Titles layout={layout} />}
      {rowsOf(state.values).map((row, place) => (
        <Span
          key={row.key}
          state={state}
          layout={layout}
          row={row}
          rest={layout.rests[place] ?? 0}
        />
      ))}
      <Spacing state={state} layout={layout} />
    </g>
  );
}
