import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { lessonContext, valuesAt } from '../../../src/components/lesson/context.ts';
import { asked, stiffSpring as model } from '../../../src/lessons/stiff-spring/model.ts';
import type { State } from '../../../src/lessons/stiff-spring/state.ts';
import { figure } from '../../../src/lessons/stiff-spring/strip.figure.tsx';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';
import type { UnitSystem } from '../../../src/units/kinds.ts';

interface Drawn extends Partial<InputsOf<typeof model>> {
  readonly guess?: number;
  readonly system?: UnitSystem;
}

function stateAt({ guess, system = 'metric', ...inputs }: Drawn): State {
  const values = evaluated(model, inputsAt(model, inputs, system));
  return { values, system, narrow: false, idPrefix: 'x', guess };
}

/** The words of the drawing, a line each. */
function lettered(drawn: Drawn): readonly string[] {
  const html = render(h(figure.Drawing, stateAt(drawn)));
  return [...html.matchAll(/<text[^>]*>([^<]*)</g)].map(([, text = '']) =>
    text.replaceAll(/[\u00a0\u202f]/g, ' ').trim(),
  );
}

const joins = (drawn: Drawn) =>
  / class="construction" d="M[\d.]+ [\d.]+L/.test(render(h(figure.Drawing, stateAt(drawn))));

describe('the stretched strip', () => {
  it('marks guess and truth once there is a guess, the truth as the page says it', () => {
    expect(lettered({ guess: 1.2e-3 })).toEqual(
      expect.arrayContaining(['your guess 1.200 mm', 'the truth 0.180 mm']),
    );
    expect(lettered({ guess: 1.2e-3, system: 'us' })).toContain('the truth 0.0070 in');
    expect(lettered({}).join()).not.toMatch(/guess|truth/);
  });
  it('says for which strip the two are', () =>
    expect(figure.notes(stateAt({ guess: 1e-3, gaugeLength: 0.6 })).at(-1)).toMatch(
      /guess and truth: for a gauge length of 300.mm/,
    ));
  it('enlarges the start of the line as long as the strip is in it', () => {
    expect(joins({ stretch: 0.2e-3 })).toBe(true);
    expect(joins({ stretch: 1e-3 })).toBe(false);
  });
  it('says what stays once it is let go, and nothing of what comes all the way back', () => {
    expect(lettered({ stretch: 2.4e-3, released: 'letGo' })).toContain('stays 0.618 mm');
    expect(lettered({ stretch: 0.3e-3, released: 'letGo' }).join()).not.toMatch(/stays/);
  });
  it('never yields below the limit, at any step', () => {
    for (let step = 0; step <= 175; step += 1)
      expect(figure.finding(stateAt({ stretch: step * 1e-5 }))).not.toMatch(/yielded/);
  });
});

describe('what a lesson asks first', () => {
  it('is where its model puts it', () => {
    const { metric } = valuesAt(lessonContext('stiff-spring', []), 'asked');
    expect(metric['stretch']).toBe(asked.stretch);
  });
  it('is refused of a lesson that asks at its defaults', () =>
    expect(() => valuesAt(lessonContext('counting-turns', []), 'asked')).toThrow(
      'content/lessons/counting-turns.mdx: at must be inputs, its model has no asked',
    ));
});
