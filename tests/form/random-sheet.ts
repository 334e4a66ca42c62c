/** Sheets as anyone might fill them in, for laws: any boxes and choices, any texts, rows with gaps. */
import fc from 'fast-check';
import type { ChoiceField } from '../../src/form/field.ts';
import { type FieldPath, findField, PATTERNS } from '../../src/form/paths.ts';
import { type Typed, withTyped } from '../../src/form/typed.ts';

const row = fc.nat(11); // as many as the shortest list takes

/** The path of any box or choice. */
export const anyPath: fc.Arbitrary<FieldPath> = fc
  .tuple(fc.constantFrom(...PATTERNS), row, row)
  .map(([pattern, first, second]) => {
    const rows = [first, second];
    return pattern.replaceAll('*', () => String(rows.shift())) as FieldPath;
  });

const anyText = fc.oneof(
  fc.string({ maxLength: 20 }),
  fc.constantFrom('29', '1 1/4', '1.5 N·m', '.042', '0,9 mm', '20-3/4"', '12 %', '1,200'),
  fc.double({ noNaN: true }).map(String),
);

/** A path with a text that may stand there. */
export const anyTyping: fc.Arbitrary<readonly [FieldPath, string]> = anyPath.chain((path) => {
  const field = findField(path);
  const isChoice = field !== undefined && 'options' in field;
  const texts = isChoice
    ? fc.constantFrom(...Object.keys((field as ChoiceField).options))
    : anyText;
  return texts.map((text) => [path, text] as const);
});

/** A sheet. */
export const anySheet: fc.Arbitrary<Typed> = fc
  .array(anyTyping, { maxLength: 40 })
  .map((typings) =>
    typings.reduce<Typed>((typed, [path, text]) => withTyped(typed, path, text), {}),
  );
