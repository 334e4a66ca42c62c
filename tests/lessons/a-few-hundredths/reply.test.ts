/** What is said to a reading: right within half a mark, every usual slip by its name. */
import { describe, expect, it } from 'vitest';
import { turnOf } from '../../../src/figures/dial/faces.ts';
import { aFewHundredths as model } from '../../../src/lessons/a-few-hundredths/model.ts';
import { pictureOf } from '../../../src/lessons/a-few-hundredths/reading/picture.ts';
import { readOff } from '../../../src/lessons/a-few-hundredths/reading/reply.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

type Inputs = Partial<InputsOf<typeof model>>;
const MARK = 1e-5;

const at = (inputs: Inputs) => evaluated(model, inputsAt(model, inputs, 'metric'));
const reply = (inputs: Inputs, marks: number, mark = MARK) =>
  readOff.replyTo(at(inputs), marks * mark).replaceAll(/[\u00a0\u202f]/g, ' ');
const numbers = Array.from({ length: 200 }, (_, place) => place + 1);

/** The number of a picture whose looks are so. */
function pictureWith(pick: (before: number, now: number) => boolean): number {
  const found = numbers.find((number) => {
    const { before, now } = pictureOf(number);
    return pick(before, now);
  });
  if (found === undefined) throw new Error('no such picture');
  return found;
}

describe('how far the hand moved', () => {
  it('is right for every picture, on both dials, half a mark off, and with either sign', () => {
    for (const picture of numbers) {
      const { before, now } = pictureOf(picture);
      const moved = now - before;
      for (const typed of [moved, -moved, Math.abs(moved) + 0.5])
        expect(reply({ picture }, typed)).toMatch(/^Yes\. Before: small hand past \d/);
      expect(reply({ picture, face: 'inch' }, moved, 25.4e-6)).toMatch(/^Yes\..* in\.$/);
    }
  });

  it('is explained by both hands, the way and the zero', () =>
    expect(reply({ picture: 1 }, 12)).toBe(
      'Yes. Before: small hand past 6, big hand on 6: 6.060 mm. Now: small hand past 5, big hand on 94: 5.940 mm. The hand ran backwards, and it passed zero on the way. It moved 0.120 mm.',
    ));

  it('is never taken as right two marks off, or by one of the slips', () => {
    for (const picture of numbers) {
      const { before, now } = pictureOf(picture);
      const moved = Math.abs(now - before);
      for (const typed of [moved + 2, moved - 2, moved + 100, now, before, 10 * moved])
        expect(reply({ picture }, typed)).not.toMatch(/^Yes/);
    }
  });

  it('names the usual slips', () => {
    expect(reply({ picture: 1 }, 88)).toMatch(/^You subtracted the big hands alone/);
    expect(reply({ picture: 1 }, 112)).toMatch(/^That is a whole turn too many/);
    const longer = pictureWith((before, now) => Math.abs(now - before) > 100);
    const { before, now } = pictureOf(longer);
    expect(reply({ picture: longer }, Math.abs(now - before) - 100)).toMatch(
      /^A whole turn is lost|^You subtracted the big hands alone/,
    );
    const within = pictureWith((was, is) => Math.floor(was / 100) === Math.floor(is / 100));
    const short = pictureOf(within);
    const other = 100 - Math.abs(short.now - short.before);
    expect(reply({ picture: within }, other)).toMatch(/^You went round the dial the other way/);
    expect(reply({ picture: 1 }, 594)).toMatch(/^That is what the dial shows now/);
    expect(reply({ picture: 1 }, 606)).toMatch(/^That is what the dial showed before/);
    expect(reply({ picture: 1 }, 14)).toMatch(/^Close, but not on the mark/);
    expect(reply({ picture: 1 }, 1.2)).toMatch(/^The digits fit, the scale does not/);
    expect(reply({ picture: 1 }, 12 * 25.4)).toMatch(/^The digits fit, the scale does not/);
    expect(reply({ picture: 1 }, 55)).toMatch(/^Not correct, and not one of the usual slips/);
  });
});

describe('what the dial shows', () => {
  const one = { picture: 1, look: 'one' } as const; // small hand past 5, big hand on 94

  it('is right with turns and marks together', () =>
    expect(reply(one, 594)).toBe('Yes. Small hand past 5, big hand on 94: 5.940 mm.'));

  it.each([
    [94, /^That is the big hand alone.*add 5 whole turns, 5.000 mm/],
    [694, /^That is one turn too many.*has not reached 6/],
    [494, /^A whole turn is lost/],
    [506, /^You counted the marks the wrong way round/],
    [59.4, /^The digits fit, the scale does not/],
    [597, /^Close/],
    [-594, /^Not correct/],
  ])('read as %f marks', (marks, says) => expect(reply(one, marks)).toMatch(says));
});

describe('the dial’s own units', () => {
  it('are those of its face, whatever the reader has elsewhere', () => {
    expect(readOff.unitsOf(at({ face: 'inch' }))).toBe('us');
    expect(readOff.unitsOf(at({ face: 'metric' }))).toBe('metric');
    expect([turnOf('metric'), turnOf('inch')]).toEqual([1e-3, 2.54e-3]);
  });
  it('are inches at the start for readers of US units', () =>
    expect(inputsAt(model, {}, 'us').face).toBe('inch'));
});
