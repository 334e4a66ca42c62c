/**
 * The boxes of the bench: what kind of quantity each takes, and what becomes of a bare number when the units are switched.
 * Units: none; what is typed is text.
 * Source: definition.
 */
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { leadingNumber } from '../../units/reading/parse-number.ts';
import { tidyText } from '../../units/reading/tidy-text.ts';

/** What can be typed: the wrench on the slack band and on the tight one, what the dial reads, the no-load torque, the answer. */
export type BoxName = 'slack' | 'wrench' | 'reading' | 'drag' | 'answer';

const KINDS = {
  slack: 'torque',
  wrench: 'torque',
  reading: 'stretch',
  drag: 'torque',
  answer: 'stress',
} as const satisfies Readonly<Record<BoxName, QuantityKind>>;

const NAMES = Object.keys(KINDS) as readonly BoxName[];

/** The boxes, empty. */
const empty: Readonly<Record<BoxName, string>> = {
  slack: '',
  wrench: '',
  reading: '',
  drag: '',
  answer: '',
};

export const BOXES = { kinds: KINDS, names: NAMES, empty } as const;

function isBare(text: string): boolean {
  const number = leadingNumber(tidyText(text));
  return number.ok && number.rest === '';
}

/** A text so that it means the same where the box shows another unit. */
function sameIn(text: string, was: string, is: string): string {
  if (was === is) return text;
  if (isBare(text)) return `${text.trim()} ${was}`;
  const bare = text.endsWith(` ${is}`) ? text.slice(0, -is.length - 1) : '';
  return isBare(bare) ? bare : text;
}

/** What is typed, so that bare numbers keep their meaning; the dial's own unit is not switched. */
export function reworded(
  typed: Readonly<Record<BoxName, string>>,
  was: UnitSystem,
  is: UnitSystem,
): Readonly<Record<BoxName, string>> {
  const texts = NAMES.map((name) => {
    const kind = KINDS[name];
    const text = typed[name];
    return name === 'reading'
      ? [name, text]
      : [name, sameIn(text, unitLabel(kind, was), unitLabel(kind, is))];
  });
  return Object.fromEntries(texts);
}
