/** The bench's state: each command changes what it should, and nothing where it can do nothing. */
import { describe, expect, it } from 'vitest';
import { benchMillAt } from '../../src/core/bench.ts';
import {
  apply,
  type Bench,
  type Command,
  freshBench,
  isNoted,
  isSlack,
  MOST,
  seriesAtHand,
} from '../../src/practice/state/bench.ts';

const fresh = (): Bench => freshBench(7, 'clean', 'metric');
const after = (...commands: readonly Command[]): Bench => commands.reduce(apply, fresh());
const CLAMP: Command = { do: 'clamp' };
const turn = (torque: number): Command => ({ do: 'turn', torque });
const write = (dial: string): Command => ({ do: 'write', dial });

describe('a series', () => {
  it('begins with the clamps, in the way that was chosen', () => {
    const bench = after(
      { do: 'handle', how: { clamps: 'careful' } },
      { do: 'handle', how: { hands: 'gloved' } },
      CLAMP,
    );
    expect(bench.taken).toEqual([
      { clamps: 'careful', hands: 'gloved', attempt: 0, torques: [], isReleased: false },
    ]);
    expect(isSlack(bench)).toBe(true);
  });
  it('takes torques that the maker allows, and no others', () => {
    const { mostTorque } = benchMillAt(7, 'clean').told;
    const clamped = after(CLAMP);
    const tight = after(CLAMP, turn(5), turn(mostTorque));
    expect(seriesAtHand(tight)?.torques).toEqual([5, mostTorque]);
    for (const torque of [0, -1, mostTorque + 0.1, Number.NaN])
      expect(apply(clamped, turn(torque))).toBe(clamped);
  });
  it('is not turned without clamps, nor clamped twice', () => {
    expect(after(turn(5))).toEqual(fresh());
    const clamped = after(CLAMP);
    expect(apply(clamped, CLAMP)).toBe(clamped);
  });
  it('ends with letting off, and the next has the next number', () => {
    const let0 = after(CLAMP, turn(5), { do: 'letOff' });
    expect(seriesAtHand(let0)).toBeUndefined();
    expect(isSlack(let0)).toBe(true);
    expect(seriesAtHand(apply(let0, CLAMP))?.attempt).toBe(1);
    expect(after({ do: 'letOff' })).toEqual(fresh());
  });
  it('has an end, and so has the list of series', () => {
    const many = Array.from({ length: MOST.torques + 5 }, () => turn(5));
    expect(seriesAtHand(after(CLAMP, ...many))?.torques).toHaveLength(MOST.torques);
    const series = Array.from({ length: MOST.series + 5 }, (): Command[] => [
      CLAMP,
      { do: 'letOff' },
    ]);
    expect(after(...series.flat()).taken).toHaveLength(MOST.series);
  });
});

describe('rows', () => {
  it('are of the look at hand, and the box is empty again', () => {
    const bench = after(
      CLAMP,
      write('6.2'),
      turn(5),
      { do: 'type', box: 'reading', text: '6.1' },
      write('6.1'),
    );
    expect(bench.rows).toEqual([
      { series: 0, place: 0, dial: '6.2' },
      { series: 0, place: 1, dial: '6.1' },
    ]);
    expect(bench.typed.reading).toBe('');
    expect(isNoted(bench)).toBe(true);
  });
  it('can be corrected and deleted, each by its number', () => {
    const bench = after(CLAMP, write('a'), write('b'), write('c'));
    const dials = (command: Command) => apply(bench, command).rows.map(({ dial }) => dial);
    expect(dials({ do: 'correct', row: 1, dial: 'B' })).toEqual(['a', 'B', 'c']);
    expect(dials({ do: 'remove', row: 0 })).toEqual(['b', 'c']);
    expect(dials({ do: 'remove', row: 9 })).toEqual(['a', 'b', 'c']);
  });
  it('are not written without a series', () => expect(after(write('1'))).toEqual(fresh()));
});

describe('the dial’s zero', () => {
  it('is set where the hand is, until a row is written', () => {
    expect(seriesAtHand(after(CLAMP, turn(5), { do: 'zero' }))?.zeroedAt).toBe(1);
    const noted = after(CLAMP, turn(5), write('6.1'));
    expect(apply(noted, { do: 'zero' })).toBe(noted);
    expect(after({ do: 'zero' })).toEqual(fresh());
  });
});

describe('what else can be tried', () => {
  it('is the handle on a slack band alone', () => {
    expect(after({ do: 'try', torque: 2 }).tries).toEqual([2]);
    expect(after(CLAMP, turn(5), { do: 'try', torque: 2 }).tries).toEqual([]);
    expect(after({ do: 'try', torque: 0 }).tries).toEqual([]);
  });
  it('is the note of a tight band alone', () => {
    expect(after(CLAMP, { do: 'pluck' }).plucks).toEqual([]);
    expect(after(CLAMP, turn(5), { do: 'pluck' }, { do: 'pluck' }).plucks).toEqual([
      { series: 0, place: 1 },
      { series: 0, place: 1 },
    ]);
  });
  it('is the band’s section, and the lid', () => {
    expect(after({ do: 'measure' }).isMeasured).toBe(true);
    expect(after({ do: 'lift' }).isLifted).toBe(true);
    expect(after({ do: 'lift' }, { do: 'shut' }).isLifted).toBe(false);
  });
});

describe('the unit switch', () => {
  const typed = after(
    { do: 'type', box: 'wrench', text: '12' },
    { do: 'type', box: 'drag', text: '1 ft·lbf' },
    { do: 'type', box: 'reading', text: '6.1' },
    { do: 'type', box: 'answer', text: 'nonsense' },
  );
  it('keeps what numbers mean: the old unit is written out, the new one left off', () =>
    expect(apply(typed, { do: 'units', system: 'us' }).typed).toEqual({
      slack: '',
      wrench: '12 N·m',
      drag: '1',
      reading: '6.1',
      answer: 'nonsense',
    }));
  it('gives back what was typed when it is switched back', () => {
    const back = apply(apply(typed, { do: 'units', system: 'us' }), {
      do: 'units',
      system: 'metric',
    });
    expect(back).toEqual(typed);
  });
  it('changes nothing to the same system', () =>
    expect(apply(typed, { do: 'units', system: 'metric' })).toEqual(typed));
});
