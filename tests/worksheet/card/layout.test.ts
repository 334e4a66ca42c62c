/** What goes on a card: large letters for few bands, every torque before any way, and what is left out by its number. */
import { describe, expect, it } from 'vitest';
import { evaluateWorksheet, type Worksheet } from '../../../src/core/worksheet.ts';
import { cardLayout } from '../../../src/worksheet/card/layout.ts';
import { SIZES } from '../../../src/worksheet/card/room.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';

const band = (place: number) => ({
  name: `band ${place}`,
  bodyWidth: 0.02 + place * 1e-3,
  thickness: 0.9e-3,
  targetStress: 80e6,
});
const way = (place: number) => ({
  name: `way ${place}`,
  torque: 9 + place / 2,
  pressure: undefined,
  readings: [],
});
const many = <Item>(count: number, item: (place: number) => Item): readonly Item[] =>
  Array.from({ length: count }, (_, place) => item(place));
const mill = (bands: number, ways = 0, stress = 90e6): Worksheet => ({
  ...millA,
  target: { ...millA.target, stress },
  bands: many(bands, band),
  ways: many(ways, way),
});
const laidOut = (worksheet: Worksheet, name = 'Yarrock') =>
  cardLayout(evaluateWorksheet(worksheet), shownIn('metric'), worksheet, name);

describe('the layout of the card', () => {
  it.each([0, 1, 2])('gives %i other bands numerals as large as the first one has', (others) => {
    const { size, blocks, bands } = laidOut(mill(others));
    expect(size).toBe('large');
    expect(blocks).toHaveLength(1 + others);
    expect(bands).toEqual([]);
  });

  it('gives up a row of the log before letters get smaller where ways stand below three bands, one not for use yet', () => {
    const { blocks, size, logRows } = laidOut(mill(2, 1, 112e6));
    expect(blocks.map(({ setting }) => setting?.trust)).toEqual([
      'provisional',
      'measured',
      'measured',
    ]);
    expect(size).toBe('large');
    expect(logRows).toBe(2);
  });

  it('has more bands in a table, all of them while they fit', () => {
    const { blocks, bands, more } = laidOut(mill(5));
    expect(blocks).toHaveLength(1);
    expect(bands.map(({ name }) => name)).toEqual(many(5, (place) => `band ${place}`));
    expect(more.bands).toBe(0);
  });

  it('never has smaller letters for less', () => {
    const sizes = many(13, (bands) =>
      SIZES.findIndex(({ name }) => name === laidOut(mill(bands)).size),
    );
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    expect([sizes[0], sizes.at(-1)]).toEqual([0, 2]);
  });

  it('lets ways cost no more than a band, and tells what is left out by its number', () => {
    const { bands, ways, more, size } = laidOut(mill(12, 12), 'long name '.repeat(20));
    expect(size).toBe('small');
    expect(bands.length + more.bands).toBe(12);
    expect(ways.length + more.ways).toBe(12);
    const without = laidOut(mill(12), 'long name '.repeat(20)).bands;
    expect(bands.length).toBeGreaterThanOrEqual(without.length - 1);
    expect(bands.length).toBeGreaterThan(4);
    expect(more.ways).toBeGreaterThan(0);
    const fewer = laidOut(mill(3, 12));
    expect([fewer.more.bands, fewer.more.ways]).toEqual([0, 0]);
    expect(fewer.areFewWays).toBe(false);
  });

  it('gives what is left over to the pen where no torque may be set yet', () => {
    const settled = laidOut(mill(0));
    const provisional = laidOut(mill(0, 0, 112e6));
    expect(settled.logRows).toBeGreaterThanOrEqual(3);
    expect(provisional.blocks[0]?.setting?.first).toMatch(/^Do not use yet/);
    expect(provisional.logRows).toBeGreaterThan(settled.logRows);
  });
});
