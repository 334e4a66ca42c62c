/** What a link to a page for teachers carries: units and the number of learners, hostile where it comes from outside. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CLASS_LIMITS, learnersIn, USUAL_CLASS } from '../../../src/teaching/kit/class-size.ts';
import { unitsIn, withPart, withUnits } from '../../../src/teaching/kit/link-parts.ts';

describe('the units of a link', () => {
  it.each([
    ['#units=us', 'us'],
    ['#v=1&seed=3&units=metric', 'metric'],
    ['#learners=9&units=us', 'us'],
  ])('%s says %s', (fragment, units) => expect(unitsIn(fragment)).toBe(units));

  it.each([
    '',
    '#',
    '#units=',
    '#units=US',
    '#units=furlongs',
    '#units',
    '#Units=us',
    '#us',
    '#__proto__=us',
  ])('%s says none', (fragment) => expect(unitsIn(fragment)).toBeUndefined());

  it('are named once, whatever the link held before', () => {
    expect(withUnits('', 'us')).toBe('units=us');
    expect(withUnits('#answers', 'us')).toBe('units=us');
    expect(withUnits('#units=metric', 'us')).toBe('units=us');
    expect(withUnits('#v=1&units=metric&seed=3', 'us')).toBe('v=1&seed=3&units=us');
  });

  it('never throw, and come back as they were set', () =>
    fc.assert(
      fc.property(fc.string(), fc.constantFrom('metric' as const, 'us' as const), (text, units) => {
        unitsIn(text);
        const set = withUnits(`#learners=4&units=${units}`, units);
        expect(unitsIn(set)).toBe(units);
      }),
    ));
});

describe('the learners of a link', () => {
  it('are as many as it says, within what one printing has', () => {
    expect(learnersIn('#learners=24')).toBe(24);
    expect(learnersIn(`#${withPart('#units=us', 'learners', '7')}`)).toBe(7);
  });

  it.each([
    '',
    '#learners=',
    '#learners=0',
    '#learners=41',
    '#learners=1e1',
    '#learners=-3',
    '#learners=NaN',
  ])('%s says nothing: the usual number', (fragment) =>
    expect(learnersIn(fragment)).toBe(USUAL_CLASS),
  );

  it('never throw, and never leave the limits', () =>
    fc.assert(
      fc.property(fc.string(), (text) => {
        const learners = learnersIn(`#learners=${text}`);
        expect(learners).toBeGreaterThanOrEqual(CLASS_LIMITS.least);
        expect(learners).toBeLessThanOrEqual(CLASS_LIMITS.most);
      }),
    ));
});
