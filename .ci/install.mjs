/**
 * Makes sure that the dependencies of package-lock.json are installed, and says nothing when they are.
 * A stamp inside node_modules remembers what was installed: the lock file's hash, the platform, the processor.
 */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isStarted, projectNode, root, run } from './machine.mjs';

const LOCK = join(root, 'package-lock.json');
const STAMP = join(root, 'node_modules', '.installed');
const NPM_RECORD = join(root, 'node_modules', '.package-lock.json');

const machine = `${process.platform} ${process.arch}`;
const textOf = (path) => (existsSync(path) ? readFileSync(path, 'utf8') : '');

/** What the stamp reads once this lock file is installed on this machine. */
const wantedStamp = () =>
  `${machine} ${createHash('sha256').update(readFileSync(LOCK)).digest('hex')}\n`;

/** Whether npm's own record holds every locked package; those for other platforms may be missing. */
export function holdsAll(locked, installed) {
  return Object.entries(locked).every(([path, { version, optional }]) =>
    installed[path] ? installed[path].version === version : optional || path === '',
  );
}

/** Someone may have run npm by hand: then the packages are there without a stamp, or with an older one. */
function isInstalledByHand(stamp) {
  const record = textOf(NPM_RECORD);
  const isFromElsewhere = stamp !== '' && !stamp.startsWith(machine);
  if (record === '' || isFromElsewhere) return false;
  return holdsAll(JSON.parse(textOf(LOCK)).packages, JSON.parse(record).packages);
}

/** npm's own command line: the npm that started this script, or else the one on the path. */
function npm(args) {
  const script = process.env.npm_execpath;
  if (script?.endsWith('.js'))
    return { command: [process.execPath, script, ...args], shell: false };
  return { command: ['npm', ...args], shell: process.platform === 'win32' };
}

async function installAll() {
  console.log('Installing what the notebook is built with. This needs the network, once.');
  const { command, shell } = npm(['ci', '--include=dev', '--no-audit', '--no-fund']);
  const { code } = await run(command, { shell });
  if (code !== 0) {
    console.error(`npm ci did not finish (exit ${code}). Check the network, then try again.`);
  }
  return code === 0;
}

/** Where no Node.js comes with the dependencies, as on a Mac, the machine's own must be new enough. */
function isNodeNewEnough() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  const isEnough =
    projectNode() !== process.execPath || major > 22 || (major === 22 && minor >= 18);
  if (!isEnough)
    console.error(`Node.js 22.18 or newer is needed here (this is ${process.version}).`);
  return isEnough;
}

/** Installs when needed; `true` when the dependencies are there. Needs the network only then. */
export async function install() {
  const stamp = textOf(STAMP);
  if (stamp === wantedStamp()) return isNodeNewEnough();
  const isThere = isInstalledByHand(stamp) || (await installAll());
  if (isThere) writeFileSync(STAMP, wantedStamp());
  return isThere && isNodeNewEnough();
}

if (isStarted(import.meta.url)) {
  process.exitCode = (await install()) ? 0 : 1;
}
