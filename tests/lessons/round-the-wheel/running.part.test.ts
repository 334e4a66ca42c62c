// @vitest-environment jsdom
/** The band runs when it is asked to, stops when it is asked to, and goes in steps where nothing may move. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { lapEnds } from '../../../src/lessons/round-the-wheel/lap.ts';
import { roundTheWheel as model } from '../../../src/lessons/round-the-wheel/model.ts';
import { part } from '../../../src/lessons/round-the-wheel/running.part.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

type Inputs = InputsOf<typeof model>;

/** A page with the part's buttons, and the lesson's values as they are set. */
function onPage(start: Partial<Inputs>) {
  const element = document.createElement('div');
  element.innerHTML =
    '<button data-action="run"></button><button data-action="stop" hidden></button>';
  let inputs = inputsAt(model, start, 'metric');
  const said: string[] = [];
  const actions = part({
    element,
    values: () => evaluated(model, inputs),
    system: () => 'metric',
    device: () => undefined,
    set: (name, value) => {
      inputs = { ...inputs, [name]: value };
    },
    say: (words) => said.push(words),
  });
  const hidden = () => [...element.querySelectorAll('button')].map((button) => button.hidden);
  return {
    press: (action: string) => actions[action]?.(),
    place: () => inputs.place,
    said,
    hidden,
  };
}

const reduced = (matches: boolean) => vi.stubGlobal('matchMedia', () => ({ matches }));

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['requestAnimationFrame', 'cancelAnimationFrame', 'performance'] });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('running', () => {
  it('moves the place with the band, forty times slower, past the end of a lap, until stopped', () => {
    reduced(false);
    const { press, place, hidden, said } = onPage({ place: 0.9, speed: 24 });
    press('run');
    expect(hidden()).toEqual([true, false]);
    vi.advanceTimersByTime(2000);
    const loop = evaluated(model, inputsAt(model, {}, 'metric')).loopLength;
    const lapsMoved = (place() - 0.9 + 1) % 1;
    expect(Math.abs(lapsMoved / ((24 * 2) / loop / 40) - 1)).toBeLessThan(0.03); // a frame or two at the start
    press('stop');
    const stopped = place();
    vi.advanceTimersByTime(1000);
    expect(place()).toBe(stopped);
    expect(hidden()).toEqual([false, true]);
    expect(said).toEqual(['Slowed 40 times.', 'Stopped. The dot can be dragged.']);
  });

  it('does not start at rest', () => {
    reduced(false);
    const { press, place, hidden, said } = onPage({ place: 0.2, speed: 0 });
    press('run');
    vi.advanceTimersByTime(500);
    expect(place()).toBe(0.2);
    expect(hidden()).toEqual([false, true]);
    expect(said[0]).toMatch(/^At rest/);
  });

  it('goes from piece to piece where less motion is wanted, and moves by itself never', () => {
    reduced(true);
    const { press, place, hidden } = onPage({ place: 0 });
    const ends = lapEnds(evaluated(model, inputsAt(model, {}, 'metric')).strandShare);
    const pieces = [0, ends.slack, ends.idle, ends.log, ends.cutting, 1];
    const seen = pieces.slice(1).map(() => {
      press('run');
      const stood = place();
      vi.advanceTimersByTime(500);
      expect(place()).toBe(stood);
      return pieces.findLastIndex((start) => start < stood);
    });
    expect(seen).toEqual([0, 1, 2, 3, 4]);
    press('run');
    expect(place()).toBeLessThan(ends.slack);
    expect(hidden()).toEqual([false, true]);
  });
});
