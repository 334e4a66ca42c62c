/** The pictures that are drawn to be read. */
import { describe, expect, it } from 'vitest';
import { handsAt, MARKS } from '../../../src/figures/dial/hands.ts';
import { bigHand, smallHand } from '../../../src/figures/dial/positions.ts';
import { pictureOf } from '../../../src/lessons/a-few-hundredths/reading/picture.ts';

const all = Array.from({ length: 500 }, (_, place) => pictureOf(place + 1));
const count = (pick: (picture: ReturnType<typeof pictureOf>) => boolean) => all.filter(pick).length;

describe('the pictures', () => {
  it('stay on the small dial, on marks or half way between', () => {
    for (const { before, now } of all)
      for (const position of [before, now]) {
        expect(position).toBeGreaterThanOrEqual(0);
        expect(position).toBeLessThan(10 * MARKS);
        expect(Number.isInteger(2 * position)).toBe(true);
      }
  });

  it('keep the two looks so far apart that their words have room', () => {
    for (const { before, now } of all) {
      const apart = Math.abs(now - before) % MARKS;
      expect(Math.min(apart, MARKS - apart)).toBeGreaterThanOrEqual(8);
    }
  });

  it('run backwards more often than not, pass zero mostly, and lose a turn now and then', () => {
    expect(count(({ before, now }) => now < before)).toBeGreaterThan(280);
    expect(count(({ before, now }) => now > before)).toBeGreaterThan(120);
    const turnsOf = (position: number) => handsAt(position).turns;
    expect(count(({ before, now }) => turnsOf(now) !== turnsOf(before))).toBeGreaterThan(300);
    expect(count(({ before, now }) => Math.abs(now - before) > MARKS)).toBeGreaterThan(100);
  });

  it('begin with the one that the lesson asks about: twelve marks back past zero', () => {
    const { before, now } = pictureOf(1);
    expect([handsAt(before).marks, handsAt(now).marks, before - now]).toEqual([6, 94, 12]);
  });
});

describe('the positions in words', () => {
  it.each([
    [340, 'exactly on 40'],
    [341, '1 mark clockwise of 40'],
    [342, '2 marks clockwise of 40'],
    [342.5, '2 and a half marks clockwise of 40'],
    [300.5, 'half a mark clockwise of 0'],
    [399.5, '9 and a half marks clockwise of 90'],
  ])('at %f the big hand is %s', (position, words) => expect(bigHand(position)).toBe(words));

  it.each([
    [300, 'exactly on 3'],
    [306, 'just past 3'],
    [350, 'between 3 and 4'],
    [394, 'just short of 4'],
  ])('at %f the small hand is %s', (position, words) => expect(smallHand(position)).toBe(words));
});
