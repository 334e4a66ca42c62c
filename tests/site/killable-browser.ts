/** A browser with a profile of its own that can be killed as a phone kills it: all at once, without a word. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import { findChromium } from '../../.ci/browser.mjs';

/** A folder for a profile, and the way to throw it away. */
export function newProfile() {
  const folder = mkdtempSync(join(tmpdir(), 'notebook-profile-'));
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }) };
}

const ARGUMENTS = [
  '--headless',
  '--remote-debugging-port=0',
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
];

const addressOf = (child: ChildProcess) =>
  new Promise<string>((resolve, reject) => {
    let said = '';
    child.once('exit', () => reject(new Error(`the browser ended: ${said}`)));
    child.stderr?.on('data', (part) => {
      said += part;
      const [, address] = /DevTools listening on (ws:\S+)/.exec(said) ?? [];
      if (address) resolve(address);
    });
  });

/** A running browser, its one page, and its end. */
export interface Killable {
  readonly browser: Browser;
  readonly page: Page;
  /** Ends every process of it at once. */
  readonly kill: () => Promise<void>;
}

/** Starts the browser on a profile. */
export async function startKillable(folder: string): Promise<Killable> {
  const program = (await findChromium()) ?? chromium.executablePath();
  const child = spawn(program, [...ARGUMENTS, `--user-data-dir=${folder}`, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const browser = await chromium.connectOverCDP(await addressOf(child));
  const context = browser.contexts()[0];
  const page = context?.pages()[0] ?? (await context?.newPage());
  if (!page || child.pid === undefined) throw new Error('the browser must have a page');
  const group = -child.pid;
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const kill = async () => {
    process.kill(group, 'SIGKILL');
    await ended;
  };
  return { browser, page, kill };
}
