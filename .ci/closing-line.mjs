/**
 * Prints the closing line of a test run from the counts it left behind, and ends with the run's exit code.
 * `node .ci/closing-line.mjs EXIT_CODE`: without counts, or when they deny a failed exit, one has failed.
 */
import { readFileSync } from 'node:fs';
import { closingLine, ONE_FAILED } from './counts.mjs';
import { COUNTS_FILE } from './steps.mjs';

const code = Number(process.argv[2]);
let counts = ONE_FAILED;
try {
  counts = JSON.parse(readFileSync(COUNTS_FILE, 'utf8'));
} catch {
  // The run died before it counted anything.
}
if (code !== 0 && counts.failed === 0) counts = { ...counts, failed: 1 };
console.log(closingLine(counts));
process.exitCode = code === 0 && counts.failed > 0 ? 1 : code;
