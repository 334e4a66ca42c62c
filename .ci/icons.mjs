/** Makes the icons of a phone's home screen from the mark of the site (public/favicon.svg): `node .ci/icons.mjs`; look at them. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { findChromium } from './browser.mjs';
import { root } from './machine.mjs';

const PAPER = '#fbf8f1';
const ICONS = [
  { path: 'public/icon-192.png', size: 192, mark: 0.72 },
  { path: 'public/icon-512.png', size: 512, mark: 0.72 },
  { path: 'public/icon-masked-512.png', size: 512, mark: 0.56 }, // a phone may cut the corners off
];

const mark = await readFile(join(root, 'public/favicon.svg'), 'utf8');
const browser = await chromium.launch({
  executablePath: await findChromium(),
  args: ['--no-sandbox', '--disable-background-networking'],
});
for (const { path, size, mark: share } of ICONS) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<style>body { margin: 0; display: grid; place-items: center; height: 100vh; background: ${PAPER} }
    svg { width: ${share * 100}% }</style>${mark}`,
  );
  await page.screenshot({ path: join(root, path) });
  console.log(`${path}: ${size} by ${size}`);
}
await browser.close();
