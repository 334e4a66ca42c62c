/** What a hand-out asks for is printed nowhere else on it: no number of a blank in its other lines or in its drawing. */
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { type BlankPiece, blankPieces } from '../../../src/components/teach/blanks.ts';
import { lessonFigure } from '../../../src/components/teach/lesson-figure.ts';
import { FigureBody } from '../../../src/figures/FigureBody.tsx';
import { models } from '../../../src/lessons/all.ts';
import {
  evaluated,
  inputsAt,
  kindOf,
  type Model,
  numberAt,
  type Values,
} from '../../../src/models/define-model.ts';
import { formatQuantity } from '../../../src/units/format-quantity.ts';
import type { UnitSystem } from '../../../src/units/kinds.ts';
import { filesUnder, textOf } from '../../structure/project-files.ts';

interface Sheet {
  readonly figure: string;
  readonly at: Values;
  readonly tasks: readonly { readonly says: string; readonly at?: Values }[];
}

const sheets = filesUnder('content/handouts').map((path) => ({
  slug: path.replace(/^.*\/|\.yaml$/g, ''),
  sheet: parse(textOf(path)) as Sheet,
}));

/** The lines of a sheet in one system: what each prints, and the numbers that it asks for. */
function lines(model: Model, { at, tasks }: Sheet, system: UnitSystem) {
  return tasks.map((task) => {
    const values = evaluated(model, inputsAt(model, task.at ?? at, system));
    const written = ({ name, digits }: Extract<BlankPiece, { name: string }>) =>
      formatQuantity(numberAt(values, name), kindOf(model, name), system, { digits });
    const parts = blankPieces(task.says);
    const print = (piece: BlankPiece) => {
      if ('text' in piece) return piece.text;
      return 'word' in piece || piece.isBlank ? ' ___ ' : written(piece);
    };
    const asked = parts.flatMap((piece) =>
      'isBlank' in piece && piece.isBlank ? [written(piece)] : [],
    );
    return { prints: parts.map(print).join(''), asked };
  });
}

function drawn(model: Model, slug: string, { figure, at }: Sheet, system: UnitSystem): string {
  const values = evaluated(model, inputsAt(model, at, system));
  const state = { values, system, narrow: false, idPrefix: slug };
  const body = render(h(FigureBody, { figure: lessonFigure(slug, figure), state }));
  return body.replace(/<p class="visually-hidden".*?<\/p>/s, ' ').replace(/<[^>]*>/g, ' | ');
}

/** Whether a text prints a number, and not as a part of another one. */
const holds = (text: string, number: string): boolean =>
  text
    .split(number)
    .slice(0, -1)
    .some((before, at) => {
      const after = text.split(number)[at + 1] ?? '';
      return !/[\d.]$/.test(before) && !/^[\d\p{L}]/u.test(after);
    });

describe.each(sheets)('the hand-out of $slug', ({ slug, sheet }) => {
  it.each(['metric', 'us'] as const)(
    'prints nowhere the numbers that it asks for (%s)',
    (system) => {
      const model = models[slug] as Model;
      const all = lines(model, sheet, system);
      const printed = [drawn(model, slug, sheet, system), ...all.map(({ prints }) => prints)];
      for (const number of all.flatMap(({ asked }) => asked))
        expect(
          printed.filter((text) => holds(text, number)),
          number,
        ).toEqual([]);
    },
  );
});

describe('the check of a hand-out', () => {
  it('finds a number that is printed, and no part of another', () => {
    expect(holds('With 3250 N in a strand', '3250 N')).toBe(true);
    expect(holds('With 13250 N in a strand', '3250 N')).toBe(false);
  });
});
