/**
 * The study of ranges: what a sheet shows at each stage of filling it in, and how often that holds the truth. Run it by
 * `npm run range-study`; it takes some minutes, prints its tables and writes range-table.json beside itself. A number
 * behind the command changes the mills.
 * Units: shares, no unit.
 */
import { writeFileSync } from 'node:fs';
import { benchStudyMill, inventedMills } from './range-mills.ts';
import { tallyStages } from './range-tally.ts';

const count = Number(process.argv[2] ?? 2000);
const TRIALS = 5000; // to an interval
const output = new URL('range-table.json', import.meta.url);

/** Four significant digits are more than the study can tell. */
const rounded = (_: string, value: unknown): unknown =>
  typeof value === 'number' ? Number(value.toPrecision(4)) : value;

const bench = Array.from({ length: count }, (_, seed) => benchStudyMill(seed));
const table = {
  mills: count,
  stages: tallyStages(bench, TRIALS),
  invented: tallyStages(inventedMills, TRIALS),
};
console.table(table.stages);
console.table(table.invented);
writeFileSync(output, `${JSON.stringify(table, rounded, 2)}\n`);
console.log(`\nWritten to ${output.pathname}`);
