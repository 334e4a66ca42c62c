/** Imports point one way: pages, layouts, components, teaching and practice, worksheet, live, lessons, form, figures and charts, models, units, core. */
import { describe, expect, it } from 'vitest';
import { importsOf, isRelative, target } from './imports.ts';
import { filesUnder, textOf } from './project-files.ts';

const STEPS = [
  ['pages'],
  ['layouts'],
  ['components'],
  ['teaching', 'practice'],
  ['worksheet'],
  ['live'],
  ['lessons'],
  ['form'],
  ['figures', 'charts'],
  ['models'],
  ['units'],
  ['core'],
];

const SOURCE = /\.(ts|tsx|astro|mdx)$/;
const WITH_EXTENSION = /\.(ts|tsx|js|mjs|astro|css|json|yaml|mdx|svg|woff2)(\?[\w&]+)?$/;

const folderOf = (path: string): string => path.match(/^src\/([^/]+)\//)?.[1] ?? '';
const stepOf = (folder: string): number => STEPS.findIndex((step) => step.includes(folder));

/** The pages that report the checks read what they found: their tables, and nothing else of the tests. */
const REPORTS = /^src\/pages\/reference\/(checks|sources)\.astro$/;
const REPORTED = /^tests\/(published|study)\/[\w-]+\.(ts|json)$/;

const ROOM_OF_CORE = /^src\/core\/[^/]+\//;

const lessonOf = (path: string): string | undefined => path.match(/^src\/lessons\/([^/]+)\//)?.[1];

/** The list of all lessons may name each; a lesson knows only itself. */
const sameLesson = (from: string, to: string): string | undefined =>
  lessonOf(from) === undefined || lessonOf(from) === lessonOf(to)
    ? undefined
    : 'a lesson imports no other';

/** Why a file of src must not import `specifier`, or nothing when it may. */
function complaint(path: string, specifier: string): string | undefined {
  const [from, to] = [folderOf(path), folderOf(target(path, specifier))];
  if (!isRelative(specifier)) {
    return from === 'core' ? 'core imports no package' : undefined;
  }
  if (REPORTS.test(path) && REPORTED.test(target(path, specifier))) return undefined;
  if (/^(tests|\.ci)\//.test(target(path, specifier))) return 'src imports no test or script';
  if (!WITH_EXTENSION.test(specifier)) return 'an import names the file with its extension';
  if (from === 'lessons' && to === 'lessons') return sameLesson(path, target(path, specifier));
  if (from === to || stepOf(from) === -1 || to === 'styles') return undefined;
  if (from === 'core') return 'core imports nothing of ours outside core';
  if (to === 'core' && ROOM_OF_CORE.test(target(path, specifier))) return 'core has doors';
  return stepOf(to) > stepOf(from) ? undefined : `${from} is below ${to}`;
}

const complaintsAbout = (path: string, text: string): readonly string[] =>
  importsOf(text).flatMap((specifier) => {
    const reason = complaint(path, specifier);
    return reason ? [`${path} imports ${specifier}: ${reason}`] : [];
  });

const sources = filesUnder('src').filter((path) => SOURCE.test(path));
const all = sources.map((path) => [path, textOf(path)] as const);
const filesThatImport = (specifier: RegExp): readonly string[] =>
  all
    .filter(([, text]) => importsOf(text).some((each) => specifier.test(each)))
    .map(([path]) => path);

describe('imports', () => {
  it('point one way', () => {
    expect(sources.length).toBeGreaterThan(0);
    expect(all.flatMap(([path, text]) => complaintsAbout(path, text))).toEqual([]);
  });

  it('never leave the words: lessons import nothing', () => {
    const lessons = filesUnder('content').filter((path) => SOURCE.test(path));
    const imports = lessons.flatMap((path) =>
      importsOf(textOf(path)).map((specifier) => `${path} imports ${specifier}`),
    );
    expect(imports).toEqual([]);
  });

  it('bring the plotting library into charts alone, and charts into what the build draws or a reader asks for', () => {
    const plotters = filesThatImport(/^(@observablehq\/plot|jsdom)$/);
    expect(plotters.length).toBeGreaterThan(0);
    expect(plotters.filter((path) => folderOf(path) !== 'charts')).toEqual([]);
    const drawers = filesThatImport(/\/charts\//);
    const [atBuild, typesAlone, asked] = [
      /^src\/(pages|components)\/.*\.astro$/,
      'src/worksheet/log/entries.ts',
      ['src/teaching/board/Charts.tsx', 'src/worksheet/log/OverTime.tsx'],
    ];
    const others = drawers.filter((path) => !atBuild.test(path) && path !== typesAlone);
    expect(others.toSorted()).toEqual(asked);
  });

  it('bring the schema library in where the build checks the content, and into no page', () => {
    const config = 'src/content.config.ts';
    expect(filesThatImport(/^(astro\/)?zod/)).toEqual([config, 'src/content.shapes.ts']);
    expect(filesThatImport(/content\.shapes/)).toEqual([config]);
  });
});

describe('the check of the direction', () => {
  it.each([
    ['src/core/a.ts', "import { b } from '../units/b.ts';"],
    ['src/core/a.ts', "import { mean } from 'some-package';"],
    ['src/figures/A.tsx', "import { b } from '../live/b.ts';"],
    ['src/figures/A.tsx', "import { b } from '../charts/b.ts';"],
    ['src/lessons/a/model.ts', "import { b } from '../b/model.ts';"],
    ['src/figures/A.tsx', "import { b } from '../lessons/a/b.ts';"],
    ['src/lessons/a/model.ts', "import { collarTorque } from '../../core/screw/collar.ts';"],
    ['src/live/a.ts', "import { b } from '../worksheet/b.ts';"],
    ['src/live/a.ts', "const b = await import('../components/b.ts');"],
    ['src/teaching/a.ts', "import { b } from '../practice/b.ts';"],
    ['src/models/a.ts', "const all = import.meta.glob('../figures/*.tsx');"],
    ['src/components/A.astro', "---\nimport {\n  b,\n} from '../layouts/b.ts';\n---"],
    ['src/units/a.ts', "export { strain } from '../core/elasticity';"],
    ['src/live/a.ts', "import { x } from '../../tests/x.ts';"],
    ['src/pages/a.astro', "import { rows } from '../published/rows.ts';"],
    ['src/pages/reference/checks.astro', "import { x } from '../../../tests/core/x.ts';"],
  ])('refuses in %s: %s', (path, text) => expect(complaintsAbout(path, text)).toHaveLength(1));

  it.each([
    ['src/pages/a.astro', "import { strain } from '../core/elasticity.ts';"],
    ['src/live/a.ts', "import type { B } from '../figures/b.ts';"],
    ['src/layouts/A.astro', "import '../styles/base.css';"],
    ['src/lessons/a/b/C.tsx', "import { model } from '../model.ts';"],
    ['src/lessons/all.ts', "import.meta.glob('./*/model.ts')"],
    ['src/core/screw.ts', "export { collarTorque } from './screw/collar.ts';"],
    ['src/models/a.ts', "import { x } from 'd3';\n// taken from './nowhere'"],
    ['src/content.config.ts', "import { names } from './models/names.ts';"],
    ['src/pages/reference/checks.astro', "import { x } from '../../../tests/published/rows.ts';"],
  ])('accepts in %s: %s', (path, text) => expect(complaintsAbout(path, text)).toEqual([]));
});
