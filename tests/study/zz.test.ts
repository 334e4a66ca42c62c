import { expect, it } from 'vitest';
import { benchStudyMill, inventedMills } from './range-mills.ts';
import { tallyStages } from './range-tally.ts';
it('x', () => {
  const t0 = Date.now();
  console.table(tallyStages(Array.from({ length: 500 }, (_, i) => benchStudyMill(i)), 600));
  console.log('ms', Date.now() - t0);
  console.table(tallyStages(inventedMills, 5000));
  expect(1).toBe(1);
}, 200000);
