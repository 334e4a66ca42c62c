/** What comes from outside: what of it could not be read is handed on as it was found, and told. */
import { describe, expect, it } from 'vitest';
import { documentOf } from '../../../src/form/document.ts';
import { typedFrom } from '../../../src/form/typed.ts';
import { bareUnits } from '../../../src/form/units.ts';
import { sealed } from '../../../src/worksheet/io/file.ts';
import { fromFile, fromLink } from '../../../src/worksheet/io/outside.ts';
import { LONGEST_LINK, packed } from '../../../src/worksheet/io/packing.ts';
import { arrivalNotice } from '../../../src/worksheet/words/refusal-notices.ts';

const rows = (count: number) =>
  Array.from({ length: count }, (_, row) => [`readings.${row}.dial`, `${row / 7} mm`] as const);
const sheetOf = (count: number) =>
  documentOf(typedFrom([['label', 'Mill'], ...rows(count)]), bareUnits('metric'));
const withBadBox = { ...sheetOf(1), typed: { label: 'Mill', 'band.colour': 'red' } };
const fileOf = async (sheet: unknown) => new File([await sealed({ sheet })], 'sheet.json');

describe('a link or a file', () => {
  it('with a bad box is told', async () => {
    const link = await fromLink(`#${await packed(withBadBox)}`);
    const file = await fromFile(await fileOf(withBadBox));
    for (const [what, arrival] of [
      ['link', link],
      ['file', file],
    ] as const) {
      if (typeof arrival === 'string' || 'sheets' in arrival) throw new Error('no sheet');
      expect(arrivalNotice(what, arrival)).toContain('One box of this sheet could not be read.');
    }
  });

  it('of a sheet with every row filled opens again; its link may be too long to be given out', async () => {
    const full = sheetOf(2000);
    expect(await fromFile(await fileOf(full))).toEqual({ document: full, isChecked: true });
    const link = await packed(full);
    expect(link.length).toBeLessThan(LONGEST_LINK * 2);
    expect(await fromLink(`#${link}`)).toEqual({ document: full, isChecked: true });
  });

  it.each(['#x=2&q=H4sI', '#v2wH4sI', `#${'A'.repeat(5000)}`, '#v='])(
    '%s is told as damaged',
    async (fragment) => expect(await fromLink(fragment)).toBe('damaged'),
  );
});
