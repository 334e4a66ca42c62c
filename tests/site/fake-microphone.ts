/** A browser whose microphone hears a file, or that has none, or refuses it. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { findChromium } from '../../.ci/browser.mjs';
import type { Sound } from '../../src/lessons/second-opinion/listening/sound.ts';

const ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
];

/** A file of sound, one channel of whole numbers of 16 bits. */
function waveFile({ samples, rate }: Sound): Buffer {
  const file = Buffer.alloc(44 + 2 * samples.length);
  file.write('RIFF', 0);
  file.writeUInt32LE(36 + 2 * samples.length, 4);
  file.write('WAVEfmt ', 8);
  file.writeUInt32LE(16, 16);
  file.writeUInt16LE(1, 20); // plain numbers
  file.writeUInt16LE(1, 22); // one channel
  file.writeUInt32LE(rate, 24);
  file.writeUInt32LE(2 * rate, 28);
  file.writeUInt16LE(2, 32);
  file.writeUInt16LE(16, 34);
  file.write('data', 36);
  file.writeUInt32LE(2 * samples.length, 40);
  samples.forEach((sample, place) => {
    const level = Math.round(32_767 * Math.max(-1, Math.min(1, sample)));
    file.writeInt16LE(level, 44 + 2 * place);
  });
  return file;
}

/** What the microphone is: a sound that it hears over and over, or why there is none. */
export type Ears = Sound | 'refused' | 'absent';

const switchesFor = (ears: Ears, folder: string): readonly string[] => {
  if (ears === 'absent') return ['--use-fake-ui-for-media-stream'];
  if (ears === 'refused')
    return ['--use-fake-device-for-media-stream', '--deny-permission-prompts'];
  const file = join(folder, 'heard.wav');
  writeFileSync(file, waveFile(ears));
  return [
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
    `--use-file-for-fake-audio-capture=${file}`,
  ];
};

/** Runs something on a page of a browser with such a microphone. */
export async function withEars(ears: Ears, address: string, run: (page: Page) => Promise<void>) {
  const folder = mkdtempSync(join(tmpdir(), 'notebook-sound-'));
  const executablePath = await findChromium();
  const browser = await chromium.launch({
    ...(executablePath && { executablePath }),
    args: [...ARGUMENTS, ...switchesFor(ears, folder)],
  });
  try {
    const page = await browser.newPage({
      baseURL: address,
      locale: 'en-GB',
      serviceWorkers: 'block',
    });
    await run(page);
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
