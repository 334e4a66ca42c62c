/** A sheet in a file: there and back, files of before, and what is no file of ours. */
import { describe, expect, it } from 'vitest';
import { backupName, fileName, sealed, unsealed } from '../../../src/worksheet/io/file.ts';

describe('a file', () => {
  it('gives back the sheet, checked, however its lines are broken', async () => {
    const sheet = { label: 'Mühle ½', rows: [['1.5', '0.470']] };
    const text = await sealed({ sheet });
    const onOneLine = JSON.stringify(JSON.parse(text));
    for (const each of [text, onOneLine])
      expect(await unsealed(each)).toEqual({ content: { sheet }, isChecked: true });
  });

  it('gives back all sheets of a backup', async () => {
    const sheets = [{ id: 'a' }, { id: 'b' }];
    const text = await sealed({ sheets });
    expect(await unsealed(text)).toEqual({ content: { sheets }, isChecked: true });
    expect(await unsealed(text.replace('"b"', '"c"'))).toBe('damaged');
  });

  it('of before, the bare sheet, opens as one that nobody can check', async () =>
    expect(await unsealed('{"label":"Old mill"}')).toEqual({
      content: { sheet: { label: 'Old mill' } },
      isChecked: false,
    }));

  it('with another torque than was saved is damaged', async () => {
    const text = await sealed({ sheet: { torque: '14.9' } });
    expect(await unsealed(text.replace('14.9', '11.9'))).toBe('damaged');
  });

  it('cut anywhere inside its cover is damaged', async () => {
    const text = (await sealed({ sheet: { label: 'Mill' } })).trimEnd();
    for (let length = text.indexOf('check'); length < text.length; length += 1)
      expect(await unsealed(text.slice(0, length))).toBe('damaged');
  });

  it.each([
    ['', 'notOurs'],
    ['12', 'notOurs'],
    ['null', 'notOurs'],
    ['{"sheet":{}}', 'damaged'],
    ['{"sheets":[]}', 'damaged'],
    ['{"check":"00000000"}', 'damaged'],
  ])('%j is %s', async (text, kind) => expect(await unsealed(text)).toBe(kind));

  it('is named after its mill, in letters that every system takes', () => {
    expect(fileName('Ma Mühle / 3')).toBe('ma-muhle-3.worksheet.json');
    expect(fileName('Home mill')).toBe('home-mill.worksheet.json');
    expect(backupName(new Date('2026-03-04T05:06Z'))).toBe('all-sheets-2026-03-04.worksheets.json');
    expect(fileName('木')).toBe('mill.worksheet.json');
  });
});
