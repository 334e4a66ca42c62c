// @vitest-environment jsdom
/** Every figure with its inputs pushed into every corner of their ranges, on a phone and wide, in both unit systems. */
import { Fragment, h, render, type VNode } from 'preact';
import { beforeAll, describe, expect, it } from 'vitest';
import { FigureBody } from '../../src/figures/FigureBody.tsx';
import type { FigureModule, FigureState } from '../../src/figures/figure.ts';
import { defaults, evaluated, type Model, type Values } from '../../src/models/define-model.ts';
import {
  drawn,
  figures,
  type LessonFigure,
  VIEWS,
  type View,
  valuesOf,
  viewsOf,
} from './figure-states.ts';

const NO_NUMBER = /NaN|undefined|Infinity|\[object/;

/** What is wrong with the words of a figure: its finding, its description, its notes. */
function faultsInWords(html: string): readonly string[] {
  const [, finding = ''] = html.match(/<p class="finding"[^>]*>([^<]*)<\/p>/) ?? [];
  const [, description = ''] = html.match(/<p class="visually-hidden"[^>]*>([^<]*)<\/p>/) ?? [];
  const notes = [...html.matchAll(/<span>([^<]*)<\/span>/g)].map(([, note = '']) => note);
  const texts = [finding, description, ...notes];
  return [
    ...texts.filter((text) => /–/.test(text) || text.trim().length < 4), // a dash stands for no number
    ...(/^\S.*\w.*\.$/s.test(finding) ? [] : [`no sentence: ${finding}`]),
  ];
}

/** What is wrong with the names of a figure's parts: used twice, without the prefix, or pointing at nothing. */
function faultsInNames(html: string, prefix: string): readonly string[] {
  const all = (pattern: RegExp) => [...html.matchAll(pattern)].map(([, name = '']) => name);
  const ids = all(/\sid="([^"]*)"/g);
  const used = [...all(/url\(#([^)]+)\)/g), ...all(/\shref="#([^"]*)"/g)];
  return [
    ...ids.filter((id, place) => ids.indexOf(id) !== place),
    ...ids.filter((id) => !id.startsWith(prefix)),
    ...used.filter((id) => !ids.includes(id)).map((id) => `${id} is not there`),
  ];
}

/** What is wrong with the handles of a figure: each says what it moves, and where that is. */
function faultsInHandles(html: string, model: Model): readonly string[] {
  const handles = [...html.matchAll(/<g[^>]*class="handle"[^>]*>/g)].map(([handle]) => handle);
  return handles.filter((handle) => {
    const said = [/aria-label="[^"]+"/, /aria-valuetext="[^"]+"/].every((one) => one.test(handle));
    return !said || !Object.hasOwn(model.inputs, handle.match(/data-input="([^"]+)"/)?.[1] ?? '');
  });
}

function faultsOf({ figure, model }: LessonFigure, state: FigureState): readonly string[] {
  const html = drawn(figure, state);
  return [
    ...faultsInWords(html),
    ...(html.match(NO_NUMBER) ?? []),
    ...faultsInNames(html, state.idPrefix),
    ...faultsInHandles(html, model),
  ];
}

/**
 * The sheets and handles that were drawn anew while they stayed, as the inputs go from one corner to the next, where a
 * finger or the focus would lose them; and the sizes of the sheet, where it does not keep the same one.
 */
function replaced(figure: FigureModule, all: readonly Values[], view: View): readonly unknown[] {
  const place = document.createElement('div');
  const nameOf = (part: Element) => part.getAttribute('data-input') ?? part.getAttribute('viewBox');
  const parts = () =>
    new Map([...place.querySelectorAll('svg, .handle')].map((part) => [nameOf(part), part]));
  const sheets = new Set<string | null>();
  let before = parts();
  const lost = all.flatMap((values) => {
    render(h(FigureBody, { figure, state: { ...view, values } }), place);
    const now = parts();
    const anew = [...now].filter(([name, part]) => (before.get(name) ?? part) !== part);
    sheets.add(place.querySelector('svg')?.getAttribute('viewBox') ?? null);
    before = now;
    return anew.length > 0 ? [{ ...values, anew: anew.map(([name]) => name) }] : [];
  });
  render(null, place);
  return sheets.size > 1 ? [...lost, [...sheets]] : lost;
}

/** Whether a figure is a drawing, and not a table. */
function isDrawing({ figure, model }: LessonFigure): boolean {
  const values = evaluated(model, defaults(model));
  return VIEWS.some((view) => drawn(figure, { ...view, values }).includes('<svg'));
}

describe.each(figures)('$name', (lessonFigure) => {
  const { figure } = lessonFigure;
  let everywhere: readonly Values[] = [];
  beforeAll(() => {
    everywhere = valuesOf(lessonFigure);
  });

  it('draws, names and says everything in every corner', () => {
    const found = viewsOf(lessonFigure).flatMap((view) =>
      everywhere.flatMap((values) => {
        const faults = faultsOf(lessonFigure, { ...view, values });
        return faults.length > 0 ? [{ ...values, ...view, faults }] : [];
      }),
    );
    expect(found).toEqual([]);
  });

  it('tells its finding with a number at the start', () => {
    const [values = {}] = everywhere;
    for (const view of VIEWS) expect(figure.finding({ ...view, values })).toMatch(/\d/);
  });
});

describe.each(figures.filter(isDrawing))('$name', (lessonFigure) => {
  it.each(VIEWS.filter(({ system }) => system === 'metric'))(
    'keeps its sheet and what may be under a finger (narrow: $narrow)',
    (view) => {
      const everywhere = valuesOf(lessonFigure);
      expect(replaced(lessonFigure.figure, everywhere, view)).toEqual([]);
    },
  );
});

describe('the search for faults', () => {
  it.each([
    ['<path d="M0 NaN"/>', NO_NUMBER],
    ['<text>undefined mm</text>', NO_NUMBER],
    ['<rect width="Infinity"/>', NO_NUMBER],
  ])('sees %s', (html, fault) => expect(html).toMatch(fault));

  it.each([
    '<i id="p-a"></i><i id="p-a"></i>',
    '<i id="a"></i>',
    '<i clip-path="url(#p-a)"></i>',
    '<use href="#p-a"/>',
  ])('sees %s', (html) => expect(faultsInNames(html, 'p')).toHaveLength(1));

  it('sees a handle that does not say where it stands', () => {
    const [{ model }] = figures as [LessonFigure];
    const [input] = Object.keys(model.inputs);
    const handle = `<g tabindex="0" class="handle" data-input="${input}" aria-label="x" aria-valuetext="y">`;
    expect(faultsInHandles(handle, model)).toEqual([]);
    expect(faultsInHandles(handle.replace('aria-valuetext="y"', ''), model)).toHaveLength(1);
    expect(faultsInHandles(handle.replace(`"${input}"`, '"colour"'), model)).toHaveLength(1);
  });

  it.each([
    ['no number for a dash', 'The pull is –.', 1],
    ['no full stop', 'The pull is 3 N', 1],
    ['nothing', '', 2],
  ])('sees a finding with %s', (_, finding, faults) => {
    const rest = '<p class="visually-hidden">A strip.</p><span>Not to scale.</span>';
    expect(faultsInWords(`<p class="finding">${finding}</p>${rest}`)).toHaveLength(faults);
    expect(faultsInWords(`<p class="finding">The pull is 3 N.</p>${rest}`)).toEqual([]);
  });

  it('sees a handle that is drawn anew, and a sheet that changes its size', () => {
    const drawing = (key: string, viewBox: string): VNode =>
      h(
        Fragment,
        {},
        h('svg', { viewBox }, h('g', { key, class: 'handle', 'data-input': 'pull' })),
      );
    const words = { finding: () => 'x', description: () => 'x', notes: () => [] };
    const pulls = [{ pull: 1 }, { pull: 2 }];
    const [view] = VIEWS as [View];
    const faults = (Drawing: FigureModule['Drawing']) =>
      replaced({ ...words, Drawing }, pulls, view).length;
    expect(faults(() => drawing('a', '0 0 9 9'))).toBe(0);
    expect(faults(({ values }) => drawing(`${values['pull']}`, '0 0 9 9'))).toBe(1);
    expect(faults(({ values }) => drawing('a', `0 0 9 ${values['pull']}`))).toBe(1);
  });
});
