/** The bench's rows on the worksheet: what was typed stands there, in either unit system, and gives the stress that the bench finds. */
import { describe, expect, it } from 'vitest';
import {
  type BenchLevel,
  benchLooks,
  benchMillAt,
  benchStress,
  liftedLid,
} from '../../src/core/bench.ts';
import { evaluateWorksheet } from '../../src/core/worksheet.ts';
import { typedOf } from '../../src/form/document.ts';
import { sheetReader } from '../../src/form/reading.ts';
import { readDocument } from '../../src/form/schema.ts';
import { bareUnits } from '../../src/form/units.ts';
import { doneAt, topTorqueOf } from '../../src/practice/state/answering.ts';
import { apply, type Bench, type Command, freshBench } from '../../src/practice/state/bench.ts';
import { carriedDocument } from '../../src/practice/state/carrying.ts';
import { faceOf, viewOf } from '../../src/practice/state/view.ts';
import { say } from '../../src/practice/words/say.ts';
import type { UnitSystem } from '../../src/units/kinds.ts';

/** A bench at which a series was read without a mistake. */
function workedBench(seed: number, level: BenchLevel, system: UnitSystem): Bench {
  const mill = benchMillAt(seed, level);
  const unit = faceOf(mill) === 'inch' ? 0.0254 : 1e-3;
  const torques = Array.from({ length: 9 }, (_, at) => (mill.told.usualTorque * (at + 2)) / 10);
  const { looks } = benchLooks(mill, { clamps: 'quick', hands: 'bare', attempt: 0, torques });
  const commands = torques.flatMap((torque, at): Command[] => [
    { do: 'turn', torque },
    {
      do: 'write',
      dial: (((looks[at + 1]?.position as number) * mill.known.dialStep) / unit).toFixed(4),
    },
  ]);
  const all: Command[] = [{ do: 'clamp' }, ...commands, { do: 'pluck' }, { do: 'letOff' }];
  return all.reduce(apply, freshBench(seed, level, system));
}

const readFor = (bench: Bench, system: UnitSystem) => {
  const read = readDocument(JSON.parse(JSON.stringify(carriedDocument(viewOf(bench)))));
  if (typeof read === 'string') throw new Error(read);
  expect(read.setAside).toEqual([]);
  return sheetReader()(typedOf(read.document, bareUnits(system)), system);
};

const SEEDS = [1, 2, 3, 4, 5, 6];

describe('the carried sheet', () => {
  it.each(['metric', 'us'] as const)(
    'is read whole in %s units, and gives what the bench finds',
    (system) => {
      for (const seed of SEEDS) {
        const bench = workedBench(seed, 'clean', system);
        const view = viewOf(bench);
        const { worksheet, refusals } = readFor(bench, system);
        expect(refusals).toEqual({});
        const { measured } = evaluateWorksheet(worksheet);
        const lifted = liftedLid(view.mill, doneAt(view), { answer: undefined });
        if (!measured.ready) throw new Error('the sheet must give a stress');
        expect(measured.stress / (lifted.measured?.stress as number)).toBeCloseTo(1, 3);
        expect(measured.topTorque).toBeCloseTo(topTorqueOf(view), 1);
        expect(lifted.truth).toBe(benchStress(view.mill, topTorqueOf(view)));
      }
    },
  );
  it('means the same when it is opened in the other system', () => {
    for (const seed of SEEDS) {
      const bench = workedBench(seed, 'clean', 'metric');
      const [metric, us] = [readFor(bench, 'metric'), readFor(bench, 'us')].map(
        ({ worksheet }) => worksheet,
      );
      expect(us?.readings.map(({ dial }) => dial?.toFixed(9))).toEqual(
        metric?.readings.map(({ dial }) => dial?.toFixed(9)),
      );
      expect(us?.rig.gaugeLength).toBeCloseTo(metric?.rig.gaugeLength as number, 9);
    }
  });
  it('has the label’s section until the band is measured', () => {
    const bench = workedBench(3, 'worn', 'metric');
    const { told, known } = benchMillAt(3, 'worn');
    expect(readFor(bench, 'metric').worksheet.band.bodyWidth).toBeCloseTo(told.bodyWidth, 9);
    const measured = apply(bench, { do: 'measure' });
    expect(readFor(measured, 'metric').worksheet.band.bodyWidth).toBeCloseTo(known.bodyWidth, 9);
  });
  it('has the no-load torque that was told, or that was found', () => {
    const dragOf = (bench: Bench) => readFor(bench, 'metric').worksheet.tensioner.dragTorque;
    expect(dragOf(workedBench(3, 'clean', 'metric'))).toBeCloseTo(
      benchMillAt(3, 'clean').told.dragTorque as number,
      9,
    );
    const unknown = workedBench(3, 'drag', 'metric');
    expect(dragOf(unknown)).toBeUndefined();
    expect(dragOf(apply(unknown, { do: 'type', box: 'drag', text: '3.1' }))).toBeCloseTo(3.1, 9);
  });
  it('has the note, if one was heard', () => {
    const { second } = readFor(workedBench(2, 'clean', 'metric'), 'metric').worksheet;
    expect(second.note).toBeGreaterThan(20);
    expect(second.torque).toBeCloseTo(benchMillAt(2, 'clean').told.usualTorque, 1);
    const { opinions } = evaluateWorksheet(readFor(workedBench(2, 'clean', 'us'), 'us').worksheet);
    expect(opinions.note.ready && opinions.note.measured).toBeTruthy();
    expect(Math.abs(opinions.note.ready ? (opinions.note.agreementNumber ?? 9) : 9)).toBeLessThan(
      1,
    );
    const silent = { ...workedBench(2, 'clean', 'metric'), plucks: [] };
    expect(readFor(silent, 'metric').worksheet.second.note).toBeUndefined();
  });
  it('has the torques of the owner’s card to the digits that the card shows', () => {
    for (const seed of SEEDS)
      for (const system of ['metric', 'us'] as const) {
        const { usualTorque } = benchMillAt(seed, 'clean').told;
        const carried = carriedDocument(viewOf(freshBench(seed, 'clean', system)));
        const shown = say(usualTorque, 'torque', system).split('\u202f')[0];
        expect(carried.typed['use.torque']).toBe(shown);
      }
  });
  it('leaves the reading after letting off on the bench, and takes that at the start along', () => {
    const start: Command[] = [{ do: 'clamp' }, { do: 'write', dial: '0.5' }];
    const bench = [
      ...start,
      { do: 'letOff' } as const,
      { do: 'write', dial: '0.6' } as const,
    ].reduce(apply, freshBench(2, 'clean', 'metric'));
    expect(viewOf(bench).rows.map(({ slack }) => slack)).toEqual(['start', 'letOff']);
    expect(readFor(bench, 'metric').worksheet.readings.map(({ torque }) => torque)).toEqual([0]);
  });
  it('keeps rows that cannot be read as they were typed', () => {
    const bench = apply(workedBench(2, 'clean', 'metric'), {
      do: 'correct',
      row: 1,
      dial: 'smudged',
    });
    expect(carriedDocument(viewOf(bench)).tables['readings']?.[2]).toContain('smudged');
    expect(doneAt(viewOf(bench)).rows).toHaveLength(8);
  });
});
