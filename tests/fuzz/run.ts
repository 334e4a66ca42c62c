/** `npm run fuzz`: damages links and files by the tens of thousands; `COUNT` and `SEED` in the environment change it. */
import { fuzzed } from './damaged-sheets.ts';

const count = Number(process.env['COUNT'] ?? 100_000);
const seed = Number(process.env['SEED'] ?? 1);
const { refused, unharmed, others } = await fuzzed(count, seed);
console.log(`${count} damaged links and files, seed ${seed}:`);
console.log(
  `${refused} refused, ${unharmed} opened as they were, ${others.length} as another sheet`,
);
for (const other of others.slice(0, 5)) console.log(other);
process.exitCode = others.length === 0 ? 0 : 1;
