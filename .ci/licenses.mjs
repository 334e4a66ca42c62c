/**
 * The license texts of everything that the built site sends to a reader, as one file beside the pages. What is sent is
 * read off the bundles, so that no new package can be forgotten; one without a license text stops the build.
 */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { root } from './machine.mjs';

/** Its name below the base. */
export const LICENSES = 'licenses.txt';
const PACKAGE = /.*node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/;
const TEXT = /^(licen[cs]e|copying)/i;
const KATEX_FONT = /(^|[\\/])KaTeX_[^\\/]+\.woff2$/;

/** The packages that modules belong to, by the modules' ids. */
export const packagesOf = (ids) =>
  ids.flatMap((id) => PACKAGE.exec(id)?.[1].replaceAll('\\', '/') ?? []);

/** The license of a package, under its name and version. @throws where it has none */
export async function licenseOf(name, folder = join(root, 'node_modules', name)) {
  const file = (await readdir(folder)).find((each) => TEXT.test(each));
  if (!file) throw new Error(`${name} is sent to readers and must have a license text`);
  const { version } = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
  return `${name} ${version}\n\n${(await readFile(join(folder, file), 'utf8')).trim()}`;
}

const ownText = async (title, path) =>
  `${title}\n\n${(await readFile(join(root, path), 'utf8')).trim()}`;

async function licensesText(packages) {
  const texts = [
    await ownText('The tension notebook', 'LICENSE'),
    await ownText('The typefaces Alegreya and Fira Sans', 'src/styles/fonts/OFL.txt'),
  ];
  for (const name of [...packages].sort()) texts.push(await licenseOf(name));
  return `${texts.join(`\n\n${'-'.repeat(72)}\n\n`)}\n`;
}

/** The Astro integration; `others` tells the ids of the modules in what the build writes besides. */
export function licenses(others) {
  const packages = new Set();
  const collector = {
    name: 'licenses',
    generateBundle(_, bundle) {
      if (this.environment && this.environment.name !== 'client') return;
      for (const { moduleIds = [] } of Object.values(bundle))
        for (const name of packagesOf(moduleIds)) packages.add(name);
    },
  };
  return {
    name: 'licenses',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({ vite: { plugins: [collector], worker: { plugins: () => [collector] } } });
      },
      'astro:build:done': async ({ dir }) => {
        const folder = fileURLToPath(dir);
        const names = await readdir(folder, { recursive: true });
        if (names.some((name) => KATEX_FONT.test(name))) packages.add('katex');
        for (const name of packagesOf(await others())) packages.add(name);
        await writeFile(join(folder, LICENSES), await licensesText(packages));
      },
    },
  };
}
