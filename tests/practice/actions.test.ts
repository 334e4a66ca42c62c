/** What a press of a button comes to: a command, what is told, or what is wrong with a box. */
import { describe, expect, it } from 'vitest';
import { benchMillAt } from '../../src/core/bench.ts';
import { type Press, pressed } from '../../src/practice/state/actions.ts';
import { apply, type Bench, type Command, freshBench } from '../../src/practice/state/bench.ts';
import { viewOf } from '../../src/practice/state/view.ts';
import { notesInWords } from '../../src/practice/tries/heard.ts';
import { triesInWords } from '../../src/practice/words/tries-words.ts';

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
  it('says once that the hand runs back while the band straightens', () => {
    let seen = 0;
    for (let seed = 1; seed <= 20; seed += 1) {
      let bench = apply(freshBench(seed, 'toe', 'metric'), CLAMP);
      const said = [4, 6, 8, 10, 12, 14].map((torque) => {
        const { command, says } = press(apply(bench, wrench(String(torque))), 'turn');
        bench = apply(bench, command as Command);
        return says?.includes('runs back while the band straightens');
      });
      const { coilShift } = benchMillAt(seed, 'toe').hidden;
      expect(said.filter(Boolean).length).toBeLessThanOrEqual(coilShift > 0 ? 1 : 0);
      seen += said.filter(Boolean).length;
    }
    expect(seen).toBeGreaterThan(4);
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

describe('a dial', () => {
  const reading = (text: string): Bench => after(CLAMP, { do: 'type', box: 'reading', text });
  it('refuses what it cannot show, and keeps what was typed', () => {
    for (const text of ['97.5', '97.5 in', '-0.37', '10'])
      expect(press(reading(text), 'write')).toEqual({
        refusal: { box: 'reading', says: expect.stringMatching(/shows 0.* to 10.* only/) },
      });
    for (const text of ['0', '9.995', '0.3 in'])
      expect(press(reading(text), 'write').command).toEqual({ do: 'write', dial: text });
  });
  it('is read once more after letting off, and only once', () => {
    const off = apply(after(CLAMP, { do: 'turn', torque: 12 }), { do: 'letOff' });
    const typed = apply(off, { do: 'type', box: 'reading', text: '6.2' });
    const { command, says } = press(typed, 'write');
    expect(says).toBe('Row 1 is written, after letting off.');
    const written = apply(typed, command as Command);
    expect(viewOf(written).rows[0]).toMatchObject({ torque: 0, slack: 'letOff', value: 6.2e-3 });
    const again = apply(written, { do: 'type', box: 'reading', text: '6.2' });
    expect(press(again, 'write')).toEqual({ says: expect.stringContaining('already') });
  });
});

describe('the other buttons', () => {
  it('say why they cannot', () => {
    expect(press(after(), 'zero').says).toContain('clamps first');
    expect(press(after(), 'letOff').says).toContain('clamps first');
    expect(press(after(CLAMP), 'pluck').says).toContain('rattles');
    const noted = after(CLAMP, { do: 'write', dial: '6' });
    expect(press(noted, 'zero').says).toContain('spoil');
    const slack: Command = { do: 'type', box: 'slack', text: '2' };
    const tight = after(CLAMP, { do: 'turn', torque: 12 }, slack);
    expect(press(tight, 'try').says).toContain('slack');
  });
  it('are commands where they can', () => {
    expect(press(after(), 'clamp').command).toEqual(CLAMP);
    expect(press(after(), 'measure').command).toEqual({ do: 'measure' });
    const slack = after({ do: 'type', box: 'slack', text: '2' });
    expect(press(slack, 'try').command).toEqual({ do: 'try', torque: 2 });
    expect(press(after(wrench('2')), 'try').refusal?.box).toBe('slack');
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
