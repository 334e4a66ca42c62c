/** The small drawings of the reference: what the content names is drawn, what is drawn is named, and each mark shows. */
import { type ComponentType, h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { SKETCH_NAMES, SKETCH_PARTS } from '../../../src/components/reference/sketch-parts.ts';
import { heightOf, SKETCHES } from '../../../src/components/reference/sketches/all.ts';
import { letterOf } from '../../../src/components/reference/sketches/kit/lettering.ts';
import {
  type SketchSheet,
  sketchSheet,
} from '../../../src/components/reference/sketches/kit/sheet.ts';
import { keysOf } from '../../structure/content-files.ts';
import { exists, filesUnder, textOf } from '../../structure/project-files.ts';

interface Named {
  readonly of: keyof typeof SKETCHES;
  readonly marks: readonly string[];
}
interface Group {
  readonly formulae: readonly { readonly name: string; readonly sketch?: Named }[];
}

const LEAST = 30; // terms with a drawing

const ofTerms: Readonly<Record<string, Named>> = parse(textOf('content/sketches.yaml'));
const groups = filesUnder('content/formulae').map((path): [string, Group] => [
  path,
  parse(textOf(path)),
]);
const ofFormulae = groups.flatMap(([, { formulae }]) =>
  formulae.flatMap(({ sketch }) => sketch ?? []),
);
const named = [...Object.values(ofTerms), ...ofFormulae];

const pairs = ({ of, marks }: Named): readonly string[] => marks.map((mark) => `${of}: ${mark}`);
const drawable = SKETCH_NAMES.flatMap((of) => pairs({ of, marks: SKETCH_PARTS[of] }));

function drawn(of: keyof typeof SKETCHES, marks: readonly string[]): string {
  const sheet = sketchSheet({ id: 'x', marks, symbols: {}, inLetters: false });
  return render(h(SKETCHES[of].Drawing as ComponentType<{ sheet: SketchSheet }>, { sheet }));
}

it('names what tightens along its axis as it is told, a torque unless said', () => {
  expect(drawn('readings', [])).toContain('>torque<');
  const sheet = sketchSheet({ id: 'x', marks: [], symbols: {}, inLetters: false, load: 'load' });
  const told = render(
    h(SKETCHES.readings.Drawing as ComponentType<{ sheet: SketchSheet }>, { sheet }),
  );
  expect(told).toContain('>load<');
  expect(told).not.toContain('torque');
});

describe('the drawings that the content names', () => {
  it('are beside terms of the glossary', () => {
    const terms = keysOf(textOf('content/terms.yaml'));
    expect(Object.keys(ofTerms).filter((key) => !terms.includes(key))).toEqual([]);
    expect(Object.keys(ofTerms).length).toBeGreaterThanOrEqual(LEAST);
  });

  it('are in every group of formulae', () => {
    const without = groups.filter(([, { formulae }]) => !formulae.some(({ sketch }) => sketch));
    expect(groups.length).toBeGreaterThan(0);
    expect(without.map(([path]) => path)).toEqual([]);
  });

  it('are all the drawings there are, and all their parts', () => {
    const used = new Set(named.flatMap(pairs));
    expect(drawable.filter((pair) => !used.has(pair))).toEqual([]);
    expect([...used].filter((pair) => !drawable.includes(pair))).toEqual([]);
  });
});

describe.each(SKETCH_NAMES)('the drawing %s', (of) => {
  it.each([...SKETCH_PARTS[of]])('changes where %s is marked', (part) =>
    expect(drawn(of, [part])).not.toBe(drawn(of, [])),
  );

  it('has no style of its own and no id twice', () => {
    const svg = drawn(of, SKETCH_PARTS[of]);
    const ids = [...svg.matchAll(/\bid="([^"]*)"/g)].map(([, id]) => id);
    expect(svg).not.toMatch(/style=|NaN|undefined/);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('moves in a lesson that is written, if in any', () => {
    const { lesson } = SKETCHES[of];
    expect(lesson === undefined || exists(`content/lessons/${lesson}.mdx`)).toBe(true);
  });
});

describe('a sheet', () => {
  it('is higher where something is dimensioned under the drawing', () =>
    expect(heightOf('mill', ['span'])).toBeGreaterThan(heightOf('mill', ['strand'])));

  it('names a part by its letter beside a formula and in words elsewhere', () => {
    const symbols = { lead: { tex: 'l', ink: 'hand' } } as const;
    const sheet = (inLetters: boolean) => sketchSheet({ id: 'x', marks: [], symbols, inLetters });
    expect(sheet(true).lettering('lead', 'the lead').text).toBe('l');
    expect(sheet(true).lettering('clamp', 'the clamp').text).toBe('the clamp');
    expect(sheet(false).lettering('lead', 'the lead').text).toBe('the lead');
  });
});

describe('a letter', () => {
  it.each([
    ['d_2', 'd', '2'],
    ['\\Delta L', 'ΔL', undefined],
    ['\\sigma_\\text{top}', 'σ', 'top'],
    ['\\pi d_2', 'πd', '2'],
    ['M^*', 'M*', undefined],
  ])('%s is read as %s with %s below', (tex, text, below) =>
    expect(letterOf(tex)).toEqual({ text, below, isLetter: true }),
  );

  it('that is no Greek one is refused', () => expect(() => letterOf('\\foo')).toThrow(RangeError));
});
