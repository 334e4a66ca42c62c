/**
 * The rows that are not what the dial showed, in words: what was written, what it showed, what may have gone wrong.
 * Units: m in; text in the dial's own unit, as it is written.
 */
import type { Stage, WrongRow } from '../../core/bench.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { rowNumbers } from '../state/answering.ts';
import { dialUnits, type View } from '../state/view.ts';

const HOW: Readonly<Record<WrongRow['how'], string>> = {
  turns: '',
  misread: '',
  sign: ': the sign is wrong',
  unit: ': in another unit',
};

/** Each wrong row of a stage, by its number in the table. */
export function wrongInWords({ rows }: Pick<Stage, 'rows'>, view: View): readonly string[] {
  const [units, numbers] = [dialUnits(view.face), rowNumbers(view)];
  return rows.map(({ at, shown, how }) => {
    const number = numbers[at] as number;
    const written = view.rows[number - 1]?.dial.trim();
    const right = formatQuantity(shown, 'stretch', units);
    return `Row ${number}: ${written} written, the dial showed ${right}${HOW[how]}.`;
  });
}

/** The rows that cannot be read at all, and so are not used. */
export const unreadInWords = ({ rows }: Pick<View, 'rows'>): readonly string[] =>
  rows.flatMap(({ dial, refusal }, at) =>
    refusal === undefined ? [] : [`Row ${at + 1} is not used: “${dial.trim()}”. ${refusal}`],
  );
