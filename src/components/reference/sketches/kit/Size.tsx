/**
 * A dimension with its name where its part is marked: level with the name above, or upright with the name beside.
 * Conventions of ISO 129. Units: drawing units.
 */
import { ArrowHead } from '../../../../figures/dimension.tsx';
import { Name } from './Name.tsx';
import type { SketchSheet } from './sheet.ts';

const SMALL = 7; // arrowhead
const SHORT = 24; // below that the arrows stand outside

interface SizeProps<Part extends string> {
  readonly sheet: SketchSheet<Part>;
  readonly part: Part;
  readonly words: string;
  readonly from: number;
  readonly to: number;
  /** The edge at which the extension lines start. */
  readonly edge?: number;
}

/** Line and arrows along one direction, drawn level; turned by `Upright`. */
function Line<Part extends string>(props: SizeProps<Part> & { readonly across: number }) {
  const { sheet, part, from, to, across, edge = across } = props;
  const ink = sheet.ink(part);
  const isShort = to - from < SHORT;
  const reach = isShort ? 14 : 0;
  const over = across + 4 * Math.sign(across - edge);
  return (
    <>
      {edge !== across && (
        <path class="axis" d={`M${from} ${edge}V${over}M${to} ${edge}V${over}`} />
      )}
      <path
        class={ink === 'ink' ? 'thin' : `${ink}-thin`}
        d={`M${from - reach} ${across}H${to + reach}`}
      />
      <ArrowHead x={from} y={across} angle={isShort ? 0 : 180} ink={ink} size={SMALL} />
      <ArrowHead x={to} y={across} angle={isShort ? 180 : 0} ink={ink} size={SMALL} />
    </>
  );
}

/** A level dimension at y, its name in the middle above the line, or behind it where that is too short. */
export function Level<Part extends string>(props: SizeProps<Part> & { readonly y: number }) {
  const { sheet, part, words, from, to, y } = props;
  if (!sheet.has(part)) return null;
  const isShort = to - from < SHORT;
  return (
    <>
      <Line {...props} across={y} />
      <Name
        sheet={sheet}
        part={part}
        words={words}
        x={isShort ? to + 18 : (from + to) / 2}
        y={isShort ? y + 4 : y - 5}
        anchor={isShort ? 'start' : 'middle'}
      />
    </>
  );
}

/** An upright dimension at x, its name to the right of it (or to the left). */
export function Upright<Part extends string>(
  props: SizeProps<Part> & { readonly x: number; readonly side?: 'left' | 'right' },
) {
  const { sheet, part, words, from, to, x, edge = x, side = 'right' } = props;
  if (!sheet.has(part)) return null;
  return (
    <>
      <g transform="matrix(0 1 1 0 0 0)">
        <Line {...props} edge={edge} across={x} />
      </g>
      <Name
        sheet={sheet}
        part={part}
        words={words}
        x={side === 'right' ? x + 6 : x - 6}
        y={(from + to) / 2 + 4}
        anchor={side === 'right' ? 'start' : 'end'}
      />
    </>
  );
}
