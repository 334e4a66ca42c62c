/**
 * Where the travel of the nut or the piston went: one bar, cut into slack, band, frame and spring, each with its name,
 * its turns and its length under it.
 * Units: SI in the state; drawing units otherwise.
 */

import { Hatch } from '../../../figures/Hatch.tsx';
import { formatParts, formatQuantity } from '../../../units/format-quantity.ts';
import type { CountingPartProps } from './layout.ts';
import { barScale, NO_SPRING, type TravelPiece, travelPieces } from './travel-pieces.ts';

const COIL = 9; // drawing units for one zigzag of the spring's texture
const EDGES = { slack: 'hidden-edge', band: 'steel-fill', frame: 'thin', spring: 'thin' } as const;

interface PieceProps {
  readonly piece: TravelPiece;
  readonly props: CountingPartProps;
}

/** Each piece in a texture of its own, so that it is told apart without colour. */
function Block({ piece, props }: PieceProps) {
  const { y, height } = props.layout.bar;
  const box = { x: piece.from, y, width: piece.to - piece.from, height };
  const coils = Array.from({ length: Math.floor(box.width / COIL) }, (_, turn) => {
    const x = piece.from + turn * COIL;
    return `M${x} ${y + 4}l${COIL / 2} ${height - 8}l${COIL / 2} ${8 - height}`;
  });
  return (
    <g>
      {piece.key === 'frame' && <Hatch id={`${props.state.idPrefix}-frame-piece`} {...box} />}
      <path class="thin" d={piece.key === 'spring' ? coils.join('') : ''} />
      <rect class={EDGES[piece.key]} {...box} />
    </g>
  );
}

/** What is said of a piece: its turns and its length, or on a phone the number of one of the two. */
function amount(piece: TravelPiece, { state, layout }: CountingPartProps): string {
  const { system, values } = state;
  const length = formatQuantity(piece.travel, 'length', system, { digits: 3 });
  if (values.lead === 0) return length;
  if (layout.narrow) return formatParts(piece.turns, 'turns', system).number;
  return `${formatQuantity(piece.turns, 'turns', system)}, ${length}`;
}

/** Name and amount in the piece's column, and the leader that joins them to the bar. */
function Words({ piece, props, column }: PieceProps & { readonly column: number }) {
  const { bar, narrow } = props.layout;
  const x = bar.left + column * bar.column;
  const foot = bar.y + bar.height;
  const [head, line] = narrow ? [32, 17] : [40, 20];
  const ink = piece.key === 'band' ? 'steel' : '';
  return (
    <g>
      <path
        class="axis"
        d={`M${(piece.from + piece.to) / 2} ${foot + 2}L${x + 8} ${foot + head - 15}`}
      />
      <text class={ink} x={x} y={foot + head}>
        {piece.name}
      </text>
      <text class={ink} x={x} y={foot + head + line}>
        {amount(piece, props)}
      </text>
    </g>
  );
}

/** Words of the guess stay on the sheet at both ends of the bar. */
function guessAnchor(place: number, { left, right }: CountingPartProps['layout']['bar']) {
  if (place > right - 90) return 'end';
  return place < left + 90 ? 'start' : 'middle';
}

/** The guess as a mark where it would have ended, on the mill that was asked about. */
function GuessMark(props: CountingPartProps) {
  const { state, layout } = props;
  const { tensioner, slackTravel, lead } = state.values;
  const { bar } = layout;
  if (state.guess === undefined || tensioner !== 'stiffFrame') return null;
  const x = bar.left + (slackTravel + state.guess * lead) * barScale(props);
  const place = Math.min(x, bar.right);
  const words = slackTravel > 0 ? 'your guess, past the slack' : 'your guess';
  return (
    <g>
      <path class="hand-line" d={`M${place} ${bar.y - 6}V${bar.y + bar.height + 4}`} />
      <text class="hand halo" x={place} y={bar.y - 10} text-anchor={guessAnchor(place, bar)}>
        {x > bar.right ? 'your guess, off the sheet →' : words}
      </text>
    </g>
  );
}

/** Bar, names and guess. */
export function TravelBar(props: CountingPartProps) {
  const { state, layout } = props;
  const { bar } = layout;
  return (
    <g>
      <text class="note" x={bar.left} y={bar.y - 10}>
        {state.values.lead === 0 ? 'where the piston’s travel went' : 'where the turns went'}
      </text>
      <path class="axis" d={`M${bar.left} ${bar.y + bar.height}H${bar.right}`} />
      {travelPieces(props).map((piece, column) => (
        <g key={piece.key} data-sym={`${piece.key}Travel`}>
          <Block piece={piece} props={props} />
          {piece.name !== NO_SPRING && <Words piece={piece} props={props} column={column} />}
        </g>
      ))}
      <GuessMark {...props} />
    </g>
  );
}
