/** A short form of `npm run fuzz`. */
import { expect, it } from 'vitest';
import { fuzzed } from './damaged-sheets.ts';

it('no damaged link or file opens as another sheet', async () => {
  const { refused, unharmed, others } = await fuzzed(3000, 1);
  expect(others).toEqual([]);
  expect(refused).toBeGreaterThan(2500);
  expect(refused + unharmed).toBe(3000);
});
