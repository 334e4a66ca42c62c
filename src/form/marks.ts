/**
 * A reading of the dial typed in its marks: `56 marks` of so much each; and a bare number that looks like one.
 * Units: SI out (m).
 * Source: definition; a bare number beyond what a dial usually shows is taken for marks, common practice, no source.
 */
import type { InputValue } from '../core/worksheet.ts';
import { formatQuantity } from '../units/format-quantity.ts';
import type { UnitSystem } from '../units/kinds.ts';
import { type BoxReading, readBox } from './box.ts';
import type { QuantityField } from './field.ts';
import { isBareNumber } from './units.ts';

const MARKS = /^(.+?)\s*(?:marks?|div(?:ision)?s?|graduations?)\.?$/i;
const COUNT: QuantityField = { label: 'Marks', kind: 'ratio', limit: 'finite', usual: [-1e4, 1e4] };
const ASK = 'Fill in one graduation of the dial';

/** Whether a box holds a reading of the dial. */
export const isDial = (path: string): boolean => path.endsWith('.dial');

/** Reads a reading of the dial, in any unit of length or in marks of a graduation, m. */
export function readDial(
  typed: string,
  field: QuantityField,
  system: UnitSystem,
  graduation: InputValue,
): BoxReading {
  const [, counted] = MARKS.exec(typed.trim()) ?? [];
  if (counted === undefined)
    return withWayOut(typed, readBox(typed, field, system), system, graduation);
  if (graduation === undefined)
    return { value: undefined, refusal: `${ASK}: how much one mark is, is not known yet.` };
  const { value, refusal } = readBox(counted, COUNT, system);
  if (value === undefined) return { value, ...(refusal && { refusal }) };
  return readBox(`${value * graduation} m`, field, system);
}

/** The other way in which dials are written down in the US. */
const thousandths = (number: string, system: UnitSystem): string =>
  system === 'us' ? ` If it is thousandths, write ${number} thou.` : '';

/** A bare number far beyond a dial is refused, with what to write if it counts marks. */
function withWayOut(
  typed: string,
  read: BoxReading,
  system: UnitSystem,
  graduation: InputValue,
): BoxReading {
  const found = read.refusal ?? read.doubt;
  if (found === undefined || !isBareNumber(typed)) return read;
  const number = typed.trim();
  const wayOut =
    graduation === undefined
      ? `If ${number} counts marks, fill in one graduation of the dial and write ${number} marks.`
      : `If ${number} is marks of ${formatQuantity(graduation, 'stretch', system)}, write ${number} marks.${thousandths(number, system)}`;
  return { value: undefined, refusal: `${found} ${wayOut}` };
}
