/** What a press of a button comes to: a command, what is told, or what is wrong with a box. */
import { describe, expect, it } from 'vitest';
import { benchMillAt } from '../../src/core/bench.ts';
import { type Press, pressed } from '../../src/practice/state/actions.ts';
import { apply, type Bench, type Command, freshBench } from '../../src/practice/state/bench.ts';
import { viewOf } from '../../src/practice/state/view.ts';
import { notesInWords, triesInWords } from '../../src/practice/tries/heard.ts';
import { costInWords, verdict } from '../../src/practice/words/lid-words.ts';

const after = (...commands: readonly Command[]): Bench =>
  commands.reduce(apply, freshBench(7, 'clean', 'metric'));
const press = (bench: Bench, what: Press) => pressed(viewOf(bench), what);
const wrench = (text: string): Command => ({ do: 'type', box: 'wrench', text });
const CLAMP: Command = { do: 'clamp' };

describe('turning', () => {
  it('is a command with the torque on the wrench, in any unit', () => {
    expect(press(after(CLAMP, wrench('12')), 'turn').command).toEqual({ do: 'turn', torque: 12 });
    const { command } = press(after(CLAMP, wrench('10 ft·lbf')), 'turn');
    expect(command).toMatchObject({ do: 'turn' });
    expect((command as { torque: number }).torque).toBeCloseTo(13.558, 3);
  });
  it('tells what the hand feels', () => {
    expect(press(after(CLAMP, wrench('12')), 'turn').says).toContain('Read the dial');
    expect(press(after(CLAMP, wrench('0.5')), 'turn').says).toContain('has not moved');
    const tight = after(CLAMP, { do: 'turn', torque: 12 }, wrench('8'));
    expect(press(tight, 'turn').says).toContain('already holds more');
  });
  it('needs clamps, and a torque that the maker allows', () => {
    expect(press(after(wrench('12')), 'turn')).toEqual({
      says: expect.stringContaining('clamps first'),
    });
    const { mostTorque } = benchMillAt(7, 'clean').told;
    const refusal = press(after(CLAMP, wrench(String(mostTorque + 1))), 'turn').refusal;
    expect(refusal?.says).toContain(`allows ${mostTorque}.0`);
    for (const text of ['', 'x', '0', '-4'])
      expect(press(after(CLAMP, wrench(text)), 'turn')).toMatchObject({
        refusal: { box: 'wrench' },
      });
  });
});

describe('writing', () => {
  it('takes what can be read, and says which row it is', () => {
    const bench = after(CLAMP, { do: 'type', box: 'reading', text: ' 6.2 ' });
    expect(press(bench, 'write')).toEqual({
      command: { do: 'write', dial: '6.2' },
      says: 'Row 1 is written.',
    });
  });
  it('refuses what cannot, beside its box', () => {
    const bench = after(CLAMP, { do: 'type', box: 'reading', text: '6..2' });
    expect(press(bench, 'write').refusal?.box).toBe('reading');
    expect(press(after(), 'write').says).toContain('clamps first');
  });
});

describe('the other buttons', () => {
  it('say why they cannot', () => {
    expect(press(after(), 'zero').says).toContain('clamps first');
    expect(press(after(), 'letOff').says).toContain('clamps first');
    expect(press(after(CLAMP), 'pluck').says).toContain('rattles');
    const noted = after(CLAMP, { do: 'write', dial: '6' });
    expect(press(noted, 'zero').says).toContain('spoil');
    const tight = after(CLAMP, { do: 'turn', torque: 12 }, wrench('2'));
    expect(press(tight, 'try').says).toContain('slack');
  });
  it('are commands where they can', () => {
    expect(press(after(), 'clamp').command).toEqual(CLAMP);
    expect(press(after(), 'measure').command).toEqual({ do: 'measure' });
    expect(press(after(wrench('2')), 'try').command).toEqual({ do: 'try', torque: 2 });
    const tight = after(CLAMP, { do: 'turn', torque: 12 });
    expect(press(tight, 'pluck').command).toEqual({ do: 'pluck' });
    expect(press(tight, 'zero').command).toEqual({ do: 'zero' });
    expect(press(tight, 'letOff').command).toEqual({ do: 'letOff' });
  });
});

describe('what was tried, in words', () => {
  it('brackets the no-load torque', () => {
    const { dragTorque } = benchMillAt(7, 'clean').hidden;
    const bench = after(
      { do: 'try', torque: 0.8 * dragTorque },
      { do: 'try', torque: 1.2 * dragTorque },
    );
    const [low, high] = triesInWords(viewOf(bench));
    expect(low).toContain('the handle stays');
    expect(high).toContain('the handle turns');
  });
  it('names the torque of each pluck, the highest that was reached', () => {
    const turns: Command[] = [
      { do: 'turn', torque: 12 },
      { do: 'turn', torque: 8 },
    ];
    const [tight] = notesInWords(viewOf(after(CLAMP, ...turns, { do: 'pluck' })));
    expect(tight).toMatch(/^12\.0\sN·m: \d\d(\.\d)?\sHz$/);
    const slack = notesInWords(viewOf(after(CLAMP, { do: 'turn', torque: 0.3 }, { do: 'pluck' })));
    expect(slack[0]).toContain('too slack to sing');
  });
});

describe('the lid in words', () => {
  const lifted = { topTorque: 18, truth: 100e6, measured: undefined, costs: [], slips: [] };
  it('says by how much an answer is off, and which way', () => {
    expect(verdict(lifted, 112e6, 'metric')).toMatch(/100\sMPa.*112\sMPa is 12\s% too high/);
    expect(verdict(lifted, 80e6, 'metric')).toMatch(/20\s% too low/);
    expect(verdict(lifted, 97e6, 'metric')).toMatch(/within 3\.0\s%/);
  });
  it('says a cost with its way, or what the rows would give without', () => {
    expect(costInWords({ cost: 6.1e6, without: 1e8 }, 'metric')).toMatch(/6\.1\sMPa too high/);
    expect(costInWords({ cost: -6.1e6, without: 1e8 }, 'metric')).toMatch(/6\.1\sMPa too low/);
    expect(costInWords({ cost: 1e5, without: 1e8 }, 'metric')).toBe('next to nothing');
    expect(costInWords({ cost: undefined, without: 1e8 }, 'metric')).toMatch(
      /without it, 100\sMPa/,
    );
    expect(costInWords({ cost: undefined, without: undefined }, 'metric')).toBe(
      'no stress either way',
    );
  });
});
