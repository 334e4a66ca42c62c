/**
 * A dimension with its name where its part is marked: level with the name above, or upright with the name beside.
 * Conventions of ISO 129. Units: drawing units.
 */
import { ArrowHead } from '../../../../figures/dimension.tsx';
import { Name } from './Name.tsx';
import type { SketchSheet } from './sheet.ts';

const SMALL = 7; // arrowhead
const BEYOND = 14; // how far arrows from outside come from

interface SizeProps<Part extends string> {
  readonly sheet: SketchSheet<Part>;
  readonly part: Part;
  readonly words: string;
  readonly from: number;
  readonly to: number;
  /** The edge at which the extension lines start. */
  readonly edge?: number;
}

interface LineProps<Part extends string> extends SizeProps<Part> {
  readonly across: number;
  readonly isOutside: boolean;
}

/** Line and arrows along one direction, drawn level; turned by `Upright`. */
function Line<Part extends string>(props: LineProps<Part>) {
  const { sheet, part, from, to, across, isOutside, edge = across } = props;
  const ink = sheet.ink(part);
  const reach = isOutside ? BEYOND : 0;
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
      <ArrowHead x={from} y={across} angle={isOutside ? 0 : 180} ink={ink} size={SMALL} />
      <ArrowHead x={to} y={across} angle={isOutside ? 180 : 0} ink={ink} size={SMALL} />
    </>
  );
}

interface LevelProps<Part extends string> extends SizeProps<Part> {
  readonly y: number;
  /** Where the name is: above the line; or with arrows from outside, before or behind them. */
  readonly named?: 'above' | 'left' | 'right';
}

/** A level dimension at y. */
export function Level<Part extends string>(props: LevelProps<Part>) {
  const { sheet, part, words, from, to, y, named = 'above' } = props;
  if (!sheet.has(part)) return null;
  const x = { above: (from + to) / 2, left: from - BEYOND - 4, right: to + BEYOND + 4 }[named];
  const anchor = ({ above: 'middle', left: 'end', right: 'start' } as const)[named];
  return (
    <>
      <Line {...props} across={y} isOutside={named !== 'above'} />
      <Name
        sheet={sheet}
        part={part}
        words={words}
        x={x}
        y={named === 'above' ? y - 5 : y + 4}
        anchor={anchor}
      />
    </>
  );
}

interface UprightProps<Part extends string> extends SizeProps<Part> {
  readonly x: number;
  /** Where the name is: right of the line, or above it, then with arrows from outside. */
  readonly named?: 'right' | 'above';
  readonly isOutside?: boolean;
}

/** An upright dimension at x. */
export function Upright<Part extends string>(props: UprightProps<Part>) {
  const { sheet, part, words, from, to, x, edge = x, named = 'right', isOutside = false } = props;
  if (!sheet.has(part)) return null;
  const isAbove = named === 'above';
  return (
    <>
      <g transform="matrix(0 1 1 0 0 0)">
        <Line {...props} edge={edge} across={x} isOutside={isAbove || isOutside} />
      </g>
      <Name
        sheet={sheet}
        part={part}
        words={words}
        x={isAbove ? x : x + 6}
        y={isAbove ? from - BEYOND - 4 : (from + to) / 2 + 4}
        anchor={isAbove ? 'middle' : 'start'}
      />
    </>
  );
}
