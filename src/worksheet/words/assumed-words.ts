/** What stands for empty boxes, and which box to fill in next. */
import type { WorksheetResults } from '../../core/worksheet.ts';
import { fieldAt, isFieldPath } from '../../form/paths.ts';
import { formatFixed } from '../../units/format-number.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import type { Shown } from '../state/shown.ts';

type Assumed = WorksheetResults['assumed'][number];

const NAMED: Readonly<
  Record<Exclude<Assumed['name'], 'dragTorque'>, readonly [string, QuantityKind | undefined]>
> = {
  sealFriction: ['friction of the seal', 'percent'],
  pressure: ['your pressure, as the gauge shows it', 'pressure'],
  threadFriction: ['thread friction', 'ratio'],
  collarKind: ['under the nut or head either a ball bearing or a washer', undefined],
  collarFriction: ['friction under the nut or head', 'ratio'],
  collarDiameter: ['mean diameter of the ring that rubs there', 'length'],
  thickness: ['thickness', 'thickness'],
};

/** One assumption with its range: `thread friction 0.10 to 0.20`. */
export function assumedWords({ name, low, high }: Assumed, shown: Shown): string {
  const [words, kind] = name === 'dragTorque' ? [shown.load.noLoad, shown.load.name] : NAMED[name];
  if (kind === undefined) return words;
  const range =
    kind === 'ratio'
      ? `${formatFixed(low, 2)} to ${formatFixed(high, 2)}`
      : shown.range(low, high, kind);
  return `${words} ${range}`;
}

/** A box as the next one to fill in. */
export function nextBoxName(path: string): string {
  if (!isFieldPath(path)) return path;
  const field = fieldAt(path);
  return 'of' in field && field.of ? field.of : field.label;
}
