import { describe, expect, it } from 'vitest';
import {
  evaluateWorksheet,
  heldBack,
  isAboutBand,
  type Worksheet,
} from '../../../../src/core/worksheet.ts';
import { millA } from '../fixtures/mills.ts';

const own = (worksheet: Worksheet) => {
  const results = evaluateWorksheet(worksheet);
  const beyondReadings = results.setting.ready && results.setting.beyondReadings;
  return { ...results, held: heldBack(results, { beyondReadings }) };
};

/** A mill whose seventh reading is a wrong digit off, by as much as makes the series rough. */
const withSlip = (off: number): Worksheet => ({
  ...millA,
  readings: millA.readings.map((reading, row) =>
    row === 6 && reading.dial !== undefined ? { ...reading, dial: reading.dial + off } : reading,
  ),
});

describe('a setting', () => {
  it('of a good series that agrees is not held back', () => {
    expect(own(millA).held).toBeUndefined();
  });

  it('waits where theory and measurement are apart', () => {
    const apart = own({ ...millA, rig: { ...millA.rig, gaugeLength: 0.15 } });
    expect(apart.agreement).toMatchObject({ ready: true, verdict: 'measuredHigher' });
    expect(apart.held).toEqual({ by: 'apart' });
  });

  it('waits for a doubtful row where the series is rough, and goes on where it is good', () => {
    const rough = own(withSlip(0.1e-3));
    expect(rough.verdict.grade).toBe('rough');
    expect(rough.held).toEqual({ by: 'row', row: 6 });
    const slight = own(withSlip(0.1e-3));
    expect(
      heldBack({ ...slight, verdict: { grade: 'good', reasons: [] } }, { beyondReadings: false }),
    ).toBeUndefined();
  });

  it('above the readings that may pass a maker’s limit is not measured up to', () => {
    const { setting } = own(millA);
    const measured = evaluateWorksheet(millA).measured;
    if (!setting.ready || !measured.ready) throw new Error('the mill must have a setting');
    const target = { ...millA.target, stress: 1.1 * measured.stress };
    const free = own({ ...millA, target });
    expect(free.held).toBeUndefined();
    expect(free.guards.map(({ code }) => code)).toContain('beyondReadings');
    const limited = own({
      ...millA,
      target: { ...target, makerLimitStress: 1.15 * measured.stress },
    });
    expect(limited.held).toEqual({ by: 'limit' });
    expect(limited.guards.map(({ code }) => code)).toContain('mayExceedBandLimit');
    expect(limited.guards.map(({ code }) => code)).not.toContain('beyondReadings');
  });

  it('that is only calculated and may pass a maker’s limit waits for a lower target', () => {
    const unread = { ...millA, readings: [] };
    const { theorySetting } = own(unread);
    if (!theorySetting.ready) throw new Error('the mill must have a calculated setting');
    const limited = (share: number) =>
      own({
        ...unread,
        target: { ...millA.target, makerLimitStress: share * theorySetting.stress },
      });
    expect(limited(1.05).held).toEqual({ by: 'limit' });
    expect(limited(10).held).toBeUndefined();
  });

  it('for another band waits for the limits of that band alone', () => {
    const results = own(millA);
    const guard = { level: 'warn', values: {} } as const;
    const ofBand = {
      ...guard,
      code: 'mayExceedBandLimit',
      inputs: ['bands.1.targetStress'],
    } as const;
    const judged = { ...results, guards: [ofBand] };
    expect(heldBack(judged, { beyondReadings: true, place: 1 })).toEqual({ by: 'limit' });
    expect(heldBack(judged, { beyondReadings: true, place: 0 })).toBeUndefined();
    expect(heldBack(judged, { beyondReadings: true })).toBeUndefined();
    expect(heldBack(judged, { beyondReadings: false, place: 1 })).toBeUndefined();
  });
});

describe('a guard', () => {
  it('is about the band whose boxes it names, or about the first one', () => {
    const other = { inputs: ['bands.1.targetStress', 'readings'] } as const;
    expect([isAboutBand(other, 1), isAboutBand(other, 0), isAboutBand(other)]).toEqual([
      true,
      false,
      false,
    ]);
    for (const inputs of [['target.stress'], ['readings', 'bands.1.targetStress'], []] as const)
      expect([isAboutBand({ inputs }), isAboutBand({ inputs }, 1)]).toEqual([true, false]);
  });

  it('of the eleventh band is not about the second', () =>
    expect(isAboutBand({ inputs: ['bands.10.thickness'] }, 1)).toBe(false));
});
