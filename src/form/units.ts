/**
 * The unit of a number typed without one. A sheet says which unit each kind of box had when it was written; where
 * the boxes now show another, the old unit is written behind the number: what was typed keeps its meaning to the
 * last digit, and fractions stay fractions.
 * Units: symbols of the units table.
 * Source: definition.
 */
import { displayOf, type QuantityKind, type UnitSystem } from '../units/kinds.ts';
import { leadingNumber } from '../units/parse-number.ts';
import { tidyText } from '../units/tidy-text.ts';
import { typedAt, withTyped } from './edits.ts';
import { fieldAt, WORKSHEET_FIELDS } from './fields.ts';
import type { WorksheetText } from './text.ts';

/** Unit of a bare number, by kind of box. */
export type BareUnits = Readonly<Partial<Record<QuantityKind, string>>>;

const kinds = [...new Set(Object.values(WORKSHEET_FIELDS).map(({ kind }) => kind))];

/** The units that the boxes show in a system, for every kind that has more than a number. */
export function bareUnits(system: UnitSystem): BareUnits {
  const pairs = kinds.map((kind) => [kind, displayOf(kind, system).unit] as const);
  return Object.fromEntries(pairs.filter(([, unit]) => unit !== ''));
}

function isBareNumber(text: string): boolean {
  const number = leadingNumber(tidyText(text));
  return number.ok && number.rest === '';
}

/** One text with its unit written out where it is no longer the box's own, and left off where it is. */
function reworded(typed: string, was: string | undefined, is: string | undefined): string {
  if (is === undefined || was === undefined || was === is) return typed;
  if (isBareNumber(typed)) return `${typed.trim()} ${was}`;
  const bare = typed.endsWith(` ${is}`) ? typed.slice(0, -is.length - 1) : '';
  return isBareNumber(bare) ? bare : typed;
}

/** The paths of everything typed that is a quantity. */
export function typedPaths({ boxes, readings, ways }: WorksheetText): readonly string[] {
  const inReadings = readings.flatMap((row, i) =>
    Object.keys(row).map((cell) => `readings.${i}.${cell}`),
  );
  const inWays = ways.flatMap((way, i) => [
    `ways.${i}.torque`,
    ...way.readings.flatMap((row, j) =>
      Object.keys(row).map((cell) => `ways.${i}.readings.${j}.${cell}`),
    ),
  ]);
  return [...Object.keys(boxes), ...inReadings, ...inWays];
}

/** The sheet so that its bare numbers, written in units `was`, mean the same in units `is`. */
export function inUnits(text: WorksheetText, was: BareUnits, is: BareUnits): WorksheetText {
  return typedPaths(text).reduce((sheet, path) => {
    const kind = fieldAt(path)?.kind;
    const typed = typedAt(sheet, path);
    const next = kind ? reworded(typed, was[kind], is[kind]) : typed;
    return next === typed ? sheet : withTyped(sheet, path, next);
  }, text);
}
