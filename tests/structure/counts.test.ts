/** The counts that close a test run: never kinder than the runners' own reports. */
import { describe, expect, it } from 'vitest';
import {
  closingLine,
  playwrightCounts,
  reportCounts,
  total,
  vitestCounts,
} from '../../.ci/counts.mjs';

const passed = { status: 'passed', assertionResults: [{ status: 'passed' }] };
const failed = { status: 'failed', assertionResults: [{ status: 'failed' }] };
const unreadable = { status: 'failed', assertionResults: [] };
const report = { numPassedTests: 3, numFailedTests: 0, numPendingTests: 1, numTodoTests: 1 };

describe('counts', () => {
  it('are the numbers of the unit report', () =>
    expect(vitestCounts({ ...report, numFailedTests: 1, testResults: [passed, failed] })).toEqual({
      passed: 3,
      failed: 1,
      skipped: 2,
    }));

  it('hold a file that broke before its first test for one failed', () =>
    expect(vitestCounts({ ...report, testResults: [passed, unreadable] }).failed).toBe(1));

  it('hold a browser test that passed only when tried again for failed', () => {
    const stats = { expected: 5, unexpected: 1, flaky: 1, skipped: 2 };
    expect(playwrightCounts({ stats, errors: [] })).toEqual({ passed: 5, failed: 2, skipped: 2 });
    expect(playwrightCounts({ stats, errors: [{}] }).failed).toBe(3);
  });

  it('are one failed when the runner left no report', () =>
    expect(reportCounts('no/such/report.json', vitestCounts, 0)).toEqual({
      passed: 0,
      failed: 1,
      skipped: 0,
    }));

  it('believe a failing exit code over a report without a failure', () =>
    expect(reportCounts('package.json', () => total([]), 1).failed).toBe(1));

  it('close with one plain line', () => {
    const sum = total([
      { passed: 3, failed: 0, skipped: 0 },
      { passed: 4, failed: 1, skipped: 0 },
    ]);
    expect(closingLine(sum)).toBe('7 passed, 1 failed');
    expect(closingLine({ ...sum, skipped: 2 })).toBe('7 passed, 1 failed, 2 skipped');
  });
});
