/**
 * Makes the two pictures that are kept with the project, from the built home page: the card that a shared link shows
 * (public/card.png) and the picture of README.md (content/readme.png). `node .ci/card.mjs` after a build; look at both.
 */
import { join, resolve } from 'node:path';
import { chromium } from '@playwright/test';
import { findChromium } from './browser.mjs';
import { root } from './machine.mjs';
import { serve } from './server.mjs';

const PICTURES = [
  { path: 'public/card.png', width: 1200, height: 630, styles: '.ci/card.css' },
  { path: 'content/readme.png', width: 1200, height: 900 },
];

const { server, port } = await serve({
  folder: resolve(root, process.env.OUT_DIR ?? 'dist'),
  host: '127.0.0.1',
});
const browser = await chromium.launch({
  executablePath: await findChromium(),
  args: ['--no-sandbox', '--disable-background-networking'],
});
for (const { path, width, height, styles } of PICTURES) {
  // The page's own policy refuses styles from outside; here they are ours.
  const page = await browser.newPage({
    viewport: { width, height },
    locale: 'en-GB',
    bypassCSP: true,
  });
  await page.goto(`http://127.0.0.1:${port}/`, { waitUntil: 'networkidle' });
  if (styles) await page.addStyleTag({ path: join(root, styles) });
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: join(root, path) });
  console.log(`${path}: ${width} by ${height}`);
}
await browser.close();
server.close();
