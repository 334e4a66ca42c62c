/** What the lid says: an account that closes to the digit shown, rows and series by name, no accusation by chance. */
import { describe, expect, it } from 'vitest';
import { benchLevels, benchLooks, benchMillAt, type Lifted } from '../../src/core/bench.ts';
import { randomSource } from '../../src/core/random.ts';
import { liftedFor } from '../../src/practice/lid/lifted.ts';
import { unreadInWords, wrongInWords } from '../../src/practice/lid/wrong-words.ts';
import { answerOf, rowNumbers } from '../../src/practice/state/answering.ts';
import { apply, type Bench, type Command, freshBench } from '../../src/practice/state/bench.ts';
import { faceOf, viewOf } from '../../src/practice/state/view.ts';
import { addedText, addedUp, inSteps, stressText } from '../../src/practice/words/account-words.ts';
import {
  noteInWords,
  rowsInWords,
  seriesInWords,
  unmadeInWords,
  verdict,
} from '../../src/practice/words/lid-words.ts';

/** A bench with a series whose dials are changed, in turns of the hand, before they are written. */
function worked(bench: Bench, turnsOff: (at: number) => number = () => 0): Bench {
  const mill = benchMillAt(bench.seed, bench.level);
  const unit = faceOf(mill) === 'inch' ? 0.0254 : 1e-3;
  const torques = Array.from({ length: 9 }, (_, at) => (mill.told.usualTorque * (at + 2)) / 10);
  const { looks } = benchLooks(mill, { ...bench.next, attempt: bench.taken.length, torques });
  const commands = torques.flatMap((torque, at): Command[] => {
    const position = (looks[at + 1]?.position as number) * mill.known.dialStep;
    const dial = (position + turnsOff(at) * mill.known.dialTurn) / unit;
    return [
      { do: 'turn', torque },
      { do: 'write', dial: dial.toFixed(4) },
    ];
  });
  return [{ do: 'clamp' } as const, ...commands, { do: 'letOff' } as const].reduce(apply, bench);
}

const answered = (bench: Bench, text: string) => apply(bench, { do: 'type', box: 'answer', text });

const lidOf = (bench: Bench) => liftedFor(viewOf(bench)) as Lifted;

describe('the account', () => {
  it.each(['metric', 'us'] as const)(
    'closes to the digit shown at every level, in %s',
    (system) => {
      const { uniform } = randomSource(5);
      for (const level of benchLevels)
        for (let seed = 1; seed <= 8; seed += 1) {
          const lost = uniform() < 0.5 ? 3 + Math.floor(6 * uniform()) : 99;
          const bench = worked(freshBench(seed, level, system), (at) => Number(at === lost));
          const text = system === 'us' ? 9000 + 12_000 * uniform() : 60 + 90 * uniform();
          const view = viewOf(answered(bench, text.toFixed(system === 'us' ? 0 : 1)));
          const { truth, lines } = liftedFor(view) as Lifted;
          const added = addedUp(truth, lines, system);
          const sum = added.reduce(
            (total, { steps }) => total + (steps as number),
            inSteps(truth, system),
          );
          expect(sum).toBe(inSteps(answerOf(view) as number, system));
          for (const { line, steps } of added)
            expect(
              Math.abs((steps as number) - inSteps(line.cost as number, system)),
            ).toBeLessThanOrEqual(1);
        }
    },
  );
  it('shows whole megapascals and hundreds of psi, with their sign', () => {
    expect(stressText(112.4e6, 'metric')).toBe('112\u202fMPa');
    expect(stressText(112.4e6, 'us')).toBe('16\u202f300\u202fpsi');
    expect(addedText(-12, 'metric')).toBe('−12\u202fMPa');
    expect(addedText(3, 'us')).toBe('+300\u202fpsi');
    expect(addedText(undefined, 'us')).toBe('no stress comes out');
  });
});

describe('wrong rows', () => {
  const bench = worked(freshBench(7, 'nasty', 'us'), (at) => (at === 3 ? 1 : 0));
  const view = viewOf(bench);
  const lifted = lidOf(bench);
  const turns = lifted.stages.find(({ cause }) => cause === 'turns');
  it('are named with what was written and what the dial showed', () => {
    if (!turns) throw new Error('the stage must be there');
    const [row] = view.rows.slice(3);
    const words = wrongInWords(turns, view);
    expect(words).toHaveLength(1);
    expect(words[0]).toMatch(/^Row 4: (\S+) written, the dial showed ([\d.]+)\s(mm|in)\.$/);
    expect(words[0]).toContain(row?.dial);
    expect(seriesInWords(turns)).toBe(', series 1');
  });
  it('are told where no stress comes out, with the reason', () => {
    const spoilt = worked(freshBench(7, 'nasty', 'us'), (at) => (at % 2 === 1 ? 2 : 0));
    const lid = lidOf(spoilt);
    expect(lid.measured).toBeUndefined();
    const words = rowsInWords(lid, rowNumbers(viewOf(spoilt)), 'us');
    expect(words).toMatch(/finds no stress in your rows: .+\. Written wrong: rows 2, 4, 6 and 8\./);
  });
  it('keep their number where a row before them cannot be read', () => {
    const smudged = apply(bench, { do: 'correct', row: 1, dial: 'smudged' });
    const lid = lidOf(smudged);
    const stage = lid.stages.find(({ cause }) => cause === 'turns');
    expect(wrongInWords(stage as typeof stage & object, viewOf(smudged))[0]).toMatch(/^Row 4:/);
    expect(unreadInWords(viewOf(smudged))).toEqual([
      expect.stringMatching(/^Row 2 is not used: “smudged”\./),
    ]);
  });
  it('are told apart from what did not happen', () => {
    expect(unmadeInWords(lifted.stages)).toMatch(/^No other row was misread/);
    const right = lidOf(worked(freshBench(7, 'clean', 'us')));
    expect(unmadeInWords(right.stages)).toMatch(/No row was misread/i);
    expect(unmadeInWords(lifted.stages)).not.toContain('turn of the hand');
  });
});

describe('the verdict', () => {
  const lifted = {
    ...lidOf(worked(freshBench(7, 'clean', 'metric'))),
    topTorque: 18,
    truth: 100e6,
  };
  it('says by how much an answer is off, and which way', () => {
    expect(verdict(lifted, 112e6, 'metric')).toMatch(/100\sMPa.*112\sMPa is 12\s% too high/);
    expect(verdict(lifted, 80e6, 'metric')).toMatch(/20\s% too low/);
    expect(verdict(lifted, 97e6, 'metric')).toMatch(/within 3\.0\s%/);
  });
  it('says whether the truth is inside of what the rows give', () => {
    const at = (low: number, high: number) =>
      rowsInWords({ ...lifted, measured: { stress: 1e8, low, high } }, [], 'metric');
    expect(at(9e7, 11e7)).toMatch(/90\sMPa to 110\sMPa.*inside/);
    expect(at(11e7, 12e7)).toMatch(/outside/);
  });
});

describe('the note', () => {
  const span = { stress: 1e8, low: 9e7, high: 11e7 };
  it('stands beside the truth, and with the dial where they agree', () => {
    const words = noteInWords({ ...span, torque: 20, truth: 1.02e8, together: span }, 'metric');
    expect(words).toMatch(/20\.0\sN·m says 90\sMPa to 110\sMPa; the band feels 102\sMPa/);
    expect(words).toContain('Dial and note together');
    const apart = { ...span, torque: 20, truth: 1.02e8, together: undefined };
    expect(noteInWords(apart, 'metric')).not.toContain('together');
  });
});
