/**
 * Finds a Chromium for the browser tests, and installs one where that can be done without asking.
 * CHROMIUM_PATH in the environment comes before everything else.
 */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { isStarted, run, tool } from './machine.mjs';

const WINDOWS_FOLDERS = ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'];

/** Debian's Chromium without windows: it draws alike, and the tests take two thirds of the time. */
const WINDOWLESS = '/usr/bin/chromium-headless-shell';

const usualPlaces = () => [
  WINDOWLESS,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/snap/bin/chromium',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ...WINDOWS_FOLDERS.flatMap((name) => process.env[name] ?? []).map((folder) =>
    join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
  ),
];

/** Where the test runner keeps a browser of its own, whether or not it is there. */
const downloadedChromium = () =>
  import('@playwright/test').then(
    ({ chromium }) => chromium.executablePath(),
    () => '',
  );

/** The path of a Chromium on this machine, or undefined. */
export async function findChromium() {
  const asked = process.env.CHROMIUM_PATH;
  if (asked) return existsSync(asked) ? asked : undefined;
  const installed = usualPlaces().find(existsSync);
  if (installed) return installed;
  const downloaded = await downloadedChromium();
  return existsSync(downloaded) ? downloaded : undefined;
}

const isRootOnDebian = () => process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');

async function installOnDebian() {
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const packages = ['chromium-headless-shell', 'fonts-liberation'];
  await run(['apt-get', 'update', '-q'], { env, quiet: true });
  return run(['apt-get', 'install', '-qy', '--no-install-recommends', ...packages], {
    env,
    quiet: true,
  });
}

/** Finds or installs a Chromium: `{path, output}`; without a path, `output` says why and what to do. */
export async function ensureChromium() {
  const asked = process.env.CHROMIUM_PATH;
  const found = await findChromium();
  if (found && (asked || found === WINDOWLESS || !isRootOnDebian()))
    return { path: found, output: '' };
  if (asked) return { output: `CHROMIUM_PATH names ${asked}, which is not there.` };
  const tried = isRootOnDebian()
    ? await installOnDebian()
    : await run(tool('@playwright/test', ['install', 'chromium'], 'playwright'), { quiet: true });
  const path = await findChromium();
  if (path) return { path, output: '' };
  const advice = 'No Chromium was found. Install Chromium or Chrome, or set CHROMIUM_PATH to one.';
  return { output: `${tried.output}\n${advice}` };
}

if (isStarted(import.meta.url)) {
  const { path, output } = await ensureChromium();
  if (path) console.log(path);
  else console.error(output);
  process.exitCode = path ? 0 : 1;
}
