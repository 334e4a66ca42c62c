/**
 * The name of a part, in words or as a letter, where it is marked; nothing where it is not.
 * Units: drawing units.
 */
import type { SketchSheet } from './sheet.ts';

/** Where a part is named, and how in words. */
export interface NameProps<Part extends string> {
  readonly sheet: SketchSheet<Part>;
  readonly part: Part;
  readonly words: string;
  readonly x: number;
  readonly y: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** From the name to its part: a thin line, as a path. */
  readonly leader?: string;
  /** Axes are named whether they are marked or not. */
  readonly always?: boolean;
}

/** The name, with its leader. */
export function Name<Part extends string>(props: NameProps<Part>) {
  const { sheet, part, words, x, y, anchor = 'start', leader, always = false } = props;
  if (!(always || sheet.has(part))) return null;
  const { text, below, isLetter } = sheet.lettering(part, words);
  const ink = sheet.ink(part);
  return (
    <>
      {leader && <path class="thin" d={leader} />}
      <text class={`halo ${ink}${isLetter ? ' letter' : ''}`} x={x} y={y} text-anchor={anchor}>
        {text}
        {below && (
          <tspan class={/\d|../.test(below) ? 'below upright' : 'below'} dy="3">
            {below}
          </tspan>
        )}
      </text>
    </>
  );
}
