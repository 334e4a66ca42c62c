/**
 * One bar of a nut's travel, cut into its pieces, each in a texture of its own with its words in a column under it.
 * Units: drawing units.
 */
import { Hatch } from '../../../figures/Hatch.tsx';
import type { BarPlace } from './layout.ts';
import type { TravelPiece } from './travel-pieces.ts';

const COIL = 9; // drawing units for one zigzag of the spring's texture
const EDGES = { slack: 'hidden-edge', band: 'steel-fill', frame: 'thin', spring: 'thin' } as const;

interface PieceBarProps {
  /** Unique on the page: the hatching's id begins with it. */
  readonly id: string;
  readonly bar: BarPlace;
  readonly narrow: boolean;
  readonly pieces: readonly TravelPiece[];
  /** What is said of a piece: two lines. */
  readonly say: (piece: TravelPiece) => readonly [string, string];
}

interface PieceProps extends Omit<PieceBarProps, 'pieces'> {
  readonly piece: TravelPiece;
}

/** Told apart without colour. */
function Block({ piece, id, bar: { y, height } }: PieceProps) {
  const box = { x: piece.from, y, width: piece.to - piece.from, height };
  const coils = Array.from({ length: Math.floor(box.width / COIL) }, (_, turn) => {
    const x = piece.from + turn * COIL;
    return `M${x} ${y + 4}l${COIL / 2} ${height - 8}l${COIL / 2} ${8 - height}`;
  });
  return (
    <g>
      {piece.key === 'frame' && <Hatch id={`${id}-frame-piece`} {...box} />}
      {piece.key === 'spring' && <path class="thin" d={coils.join('')} />}
      <rect class={EDGES[piece.key]} {...box} />
    </g>
  );
}

/** Two lines in the piece's column, and the leader that joins them to the bar. */
function Words({ piece, bar, narrow, say, column }: PieceProps & { readonly column: number }) {
  const x = bar.left + column * bar.column;
  const foot = bar.y + bar.height;
  const [head, line] = narrow ? [30, 16] : [36, 19];
  const ink = piece.key === 'band' ? 'steel' : '';
  const [name, amount] = say(piece);
  return (
    <g>
      <path
        class="axis"
        d={`M${(piece.from + piece.to) / 2} ${foot + 2}L${x + 8} ${foot + head - 14}`}
      />
      <text class={ink} x={x} y={foot + head}>
        {name}
      </text>
      <text class={ink} x={x} y={foot + head + line}>
        {amount}
      </text>
    </g>
  );
}

/** The bar with its words. */
export function PieceBar({ pieces, ...common }: PieceBarProps) {
  const { bar } = common;
  return (
    <g>
      <path class="axis" d={`M${bar.left} ${bar.y + bar.height}H${bar.right}`} />
      {pieces.map((piece, column) => (
        <g key={piece.key} data-sym={`${piece.key}Travel`}>
          <Block piece={piece} {...common} />
          <Words piece={piece} column={column} {...common} />
        </g>
      ))}
    </g>
  );
}
