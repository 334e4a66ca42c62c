/** Files and links as they come: whole, broken, of before, too many. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { documentOf } from '../../../src/form/document.ts';
import { bareUnits } from '../../../src/form/units.ts';
import { foundInFile, foundInLink } from '../../../src/teaching/board/reading.ts';
import { EMPTY, isMeasured, MOST } from '../../../src/teaching/board/row.ts';
import { type Item, taken, toldOf } from '../../../src/teaching/board/taking.ts';
import { sealed } from '../../../src/worksheet/io/file.ts';
import { packed } from '../../../src/worksheet/io/packing.ts';
import { learnersSheet } from './class.ts';

const item = (file: File): Item => ({ from: file.name, read: (room) => foundInFile(file, room) });
const fileOf = async (name: string, sheet: unknown) =>
  new File([await sealed({ sheet })], `${name}.json`);
const OLD = 'tests/form/fixtures';
const oldFiles = ['version-1', 'version-2'].flatMap((folder) =>
  readdirSync(`${OLD}/${folder}`)
    .filter((name) => /^[\w-]+\.json$/.test(name) && !name.startsWith('shelf'))
    .map((name) => `${OLD}/${folder}/${name}`),
);

describe('what is brought to the board', () => {
  it('is taken, and what is broken is named with its reason', async () => {
    const good = await fileOf('ann', learnersSheet('Ann', 0));
    const text = await good.text();
    const items = [
      good,
      new File([text.slice(0, 400)], 'cut.json'),
      new File([text.replace('Practice', 'Fractice').replace('Ann', 'Eve')], 'changed.json'),
      new File(['a letter'], 'letter.txt'),
      new File(['[]'], 'list.json'),
      new File(['{"format":"tension-notebook worksheet","version":9}'], 'newer.json'),
      await fileOf('ben', learnersSheet('Ann', 1)),
    ].map(item);
    const found = await taken(EMPTY, items);
    expect(found.board.rows.map(({ name }) => name)).toEqual(['Ann', 'Ann (2)']);
    expect(found.board.leftOut.map(({ from }) => from)).toEqual([
      'cut.json',
      'changed.json',
      'letter.txt',
      'list.json',
      'newer.json',
    ]);
    expect(found.board.leftOut[0]?.why).toBe('It is damaged. Ask for it again.');
    expect(found.board.leftOut[4]?.why).toContain('newer version');
    expect(found.refused).toEqual([1, 2, 3, 4, 5]);
    expect(toldOf(EMPTY, found)).toBe('2 sheets were added. 5 were left out: see below.');
  });

  it.each(oldFiles)('is opened from %s, of an older version', async (path) => {
    const file = new File([readFileSync(path, 'utf8')], 'old.json');
    const { board } = await taken(EMPTY, [item(file)]);
    expect(board.leftOut).toEqual([]);
    expect(board.rows).toHaveLength(1);
  });

  it('may be a link, alone or with its address', async () => {
    const fragment = await packed(learnersSheet('Ann', 0));
    for (const line of [`https://a.example/worksheet/#${fragment}`, `#${fragment}`, fragment]) {
      const { sheets } = await foundInLink(line, 'link 1');
      expect(sheets.map(({ label }) => label)).toEqual(['Ann']);
    }
    const { leftOut } = await foundInLink('https://a.example/worksheet/#v=2&w=AAAA', 'link 7');
    expect(leftOut).toEqual([{ from: 'link 7', why: 'It is damaged. Ask for it again.' }]);
  });

  it('may be all sheets of someone in one file', async () => {
    const sheets = [learnersSheet('Ann', 0), 'nonsense', learnersSheet('Bea', 1)];
    const file = new File([await sealed({ sheets })], 'all.json');
    const { board } = await taken(EMPTY, [item(file)]);
    expect(board.rows.map(({ name }) => name)).toEqual(['Ann', 'Bea']);
    expect(board.leftOut.map(({ from }) => from)).toEqual(['all.json, sheet 2']);
    const cut = await foundInFile(file, 1);
    expect(cut.sheets).toHaveLength(1);
    expect(cut.leftOut[0]?.why).toBe('2 of its sheets found no room.');
    const empty = await foundInFile(new File([await sealed({ sheets: [] })], 'none.json'), 9);
    expect(empty.leftOut[0]?.why).toBe('It holds no sheet.');
  });

  it('is listed with what it waits for where there is no stress', async () => {
    const blank = documentOf({ label: 'Ann' }, bareUnits('metric'));
    const { sheets } = await foundInFile(await fileOf('blank', blank), 9);
    const stress = sheets[0]?.stress;
    if (!stress || isMeasured(stress)) throw new Error('a blank sheet has no stress');
    expect(stress.waits.metric).toMatch(/^Waits for /);
  });

  it('stops where the board is full, and tells what was not read', async () => {
    const file = await fileOf('blank', documentOf({ label: 'Ann' }, bareUnits('metric')));
    const found = await taken(
      EMPTY,
      Array.from({ length: 1000 }, () => item(file)),
    );
    expect(found.board.rows).toHaveLength(MOST.sheets);
    expect(found.board.leftOut).toHaveLength(1);
    expect(found.board.leftOut[0]?.from).toBe(`${1000 - MOST.sheets} more files or links`);
    expect(found.refused).toHaveLength(1000 - MOST.sheets);
  });

  it('stops after so many at once, even if all are broken', async () => {
    const file = new File(['no'], 'no.json');
    const found = await taken(
      EMPTY,
      Array.from({ length: 1000 }, () => item(file)),
    );
    expect(found.board.leftOut).toHaveLength(MOST.atOnce + 1);
  });

  it('goes on after a fault in one of them', async () => {
    const bad: Item = { from: 'bad.json', read: () => Promise.reject(new Error('gone')) };
    const found = await taken(EMPTY, [bad, item(await fileOf('ann', learnersSheet('Ann', 0)))]);
    expect(found.board.rows).toHaveLength(1);
    expect(found.board.leftOut[0]).toEqual({
      from: 'bad.json',
      why: 'Its numbers could not be worked out.',
    });
  });
});
