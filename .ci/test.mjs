/**
 * `npm test`: installs what is missing, then checks everything. A step that fails stops only the steps that
 * need it. Two lanes run beside each other, so that two processors are used; the browser has them to itself.
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { ensureChromium } from './browser.mjs';
import { closingLine, NONE, ONE_FAILED, reportCounts, total } from './counts.mjs';
import { install } from './install.mjs';
import { run } from './machine.mjs';
import { COUNTS_FILE, REPORTS, STEPS } from './steps.mjs';

const results = [];
const failures = [];

/** Prints one step's section, its output only when it failed, and keeps its counts. */
function finish({ name, counts, began, output, isTest = false }) {
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  const tests = isTest ? `, ${closingLine(counts)}` : '';
  const failed = counts.failed > 0;
  console.log(`${name}: ${failed ? 'FAILED' : 'ok'}, ${seconds} s${tests}`);
  if (failed) console.log(`\n${output.trim().replace(/^/gm, '  | ')}\n`);
  if (failed) failures.push(name);
  results.push(counts);
  return !failed;
}

/** Runs one step of STEPS; resolves to whether it passed. */
async function step(name) {
  const began = performance.now();
  const { command, env, report, refused } = STEPS[name];
  const { code, output } = await run(command(), { quiet: true, env });
  const failed = code !== 0 || (refused?.test(output) ?? false);
  const plain = failed ? ONE_FAILED : NONE;
  const counts = report ? reportCounts(report.path, report.read, code) : plain;
  return finish({ name, counts, began, output, isTest: report !== undefined });
}

async function findBrowser() {
  const began = performance.now();
  const { path, output } = await ensureChromium();
  return finish({ name: 'browser', counts: path ? NONE : ONE_FAILED, began, output });
}

const skip = (name, reason) => console.log(`${name}: not run, because ${reason}`);

/** The build and the pages it makes. The types come first: both write Astro's generated files. */
async function buildLane() {
  await step('types');
  if (!((await step('build')) && (await step('build for a sub-folder')))) {
    skip('built pages', 'the site was not built');
    return false;
  }
  await step('built pages');
  return true;
}

async function codeLane() {
  await step('lint and format');
  await step('unit and published checks');
}

async function checkEverything() {
  const hasBrowser = await findBrowser();
  const [isBuilt] = await Promise.all([buildLane(), codeLane()]);
  if (!isBuilt) skip('in a real browser', 'the site was not built');
  else if (!hasBrowser) skip('in a real browser', 'there is no browser');
  else await step('in a real browser');
}

const began = performance.now();
rmSync(COUNTS_FILE, { force: true });
rmSync(REPORTS, { recursive: true, force: true });
mkdirSync(REPORTS, { recursive: true });
if (await install()) await checkEverything();
else results.push(ONE_FAILED);

const counts = total(results);
writeFileSync(COUNTS_FILE, `${JSON.stringify(counts)}\n`);
if (failures.length > 0) console.log(`\nFailed: ${failures.join(', ')}.`);
console.log(`\n${closingLine(counts)} in ${((performance.now() - began) / 1000).toFixed(0)} s`);
process.exitCode = counts.failed > 0 || counts.passed === 0 ? 1 : 0;
