/**
 * How many tests passed, failed and were skipped, out of the runners' own reports.
 * A runner that died, or that failed without naming a test, counts as one failed.
 */
import { readFileSync } from 'node:fs';

export const NONE = { passed: 0, failed: 0, skipped: 0 };
export const ONE_FAILED = { passed: 0, failed: 1, skipped: 0 };

/** The sum of counts. */
export const total = (counts) =>
  counts.reduce(
    (sum, each) => ({
      passed: sum.passed + each.passed,
      failed: sum.failed + each.failed,
      skipped: sum.skipped + each.skipped,
    }),
    NONE,
  );

/** Counts of a Vitest JSON report; a file that failed before its first test is one failed. */
export function vitestCounts(report) {
  const brokenFiles = report.testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && !assertionResults.some((test) => test.status === 'failed'),
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + brokenFiles.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** Counts of a Playwright JSON report; a test that passed only when tried again has failed. */
export function playwrightCounts({ stats, errors }) {
  return {
    passed: stats.expected,
    failed: stats.unexpected + stats.flaky + errors.length,
    skipped: stats.skipped,
  };
}

/** Counts of the report at `path`, held against the runner's exit code. */
export function reportCounts(path, read, code) {
  let counts;
  try {
    counts = read(JSON.parse(readFileSync(path, 'utf8')));
  } catch {
    return ONE_FAILED;
  }
  return code !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
}

/** The plain line that closes a run. */
export const closingLine = ({ passed, failed, skipped }) =>
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
