import { beforeAll, describe, expect, it } from 'vitest';
import { evaluateWorksheet } from '../../../src/core/worksheet.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { fetchGuardWords } from '../../../src/worksheet/state/told-guards.ts';
import {
  bodyDoubt,
  doubtsBesideReadings,
  readingBox,
} from '../../../src/worksheet/words/box-refusals.ts';
import { millA, millE } from '../../core/worksheet/fixtures/mills.ts';

const doubtsOf = (mill: typeof millA) =>
  doubtsBesideReadings(evaluateWorksheet(mill), shownIn('metric'));

describe('what is told under a row', () => {
  beforeAll(fetchGuardWords);
  it('is nothing of a good series', () => expect(doubtsOf(millA)).toEqual({}));

  it('is the reading that is out of line, under its dial', () => {
    const readings = millA.readings.map((reading, row) =>
      row === 6 ? { ...reading, dial: 0.475e-3 } : reading,
    );
    expect(doubtsOf({ ...millA, readings })).toEqual({
      'readings.6.dial': expect.stringMatching(/^Check row 7 /),
    });
  });

  it('is the turn of the hand that was missed, under its count', () => {
    const readings = millE.readings.map((reading) => ({ ...reading, wholeTurns: 0 }));
    expect(doubtsOf({ ...millE, readings })).toEqual({
      'readings.7.wholeTurns': expect.stringMatching(/ from row 8 on\.$/),
    });
  });
});

describe('a body as wide as the band over its teeth', () => {
  const doubtOf = (bodyWidth: number | undefined, widthOverTeeth: number | undefined) =>
    bodyDoubt({ ...millA, band: { ...millA.band, bodyWidth, widthOverTeeth } });
  it('is asked about beside its box, and refused nothing', () => {
    expect(doubtOf(0.035, 0.035)['band.bodyWidth']).toMatch(/^The same as over the teeth\?/);
    const plain = { ...millA, band: { ...millA.band, bodyWidth: 0.035 } };
    expect(evaluateWorksheet(plain).section.ready).toBe(true);
  });

  it('is not asked about where it is less, or one of the two is not known', () => {
    expect(doubtOf(0.029, 0.035)).toEqual({});
    expect(doubtOf(0.029, undefined)).toEqual({});
    expect(doubtOf(undefined, undefined)).toEqual({});
  });
});

describe('the box of one reading', () => {
  it('is not a whole row, and not the readings together', () => {
    expect(readingBox(['readings.3.dial'])).toBe('readings.3.dial');
    expect(readingBox(['readings', 'readings.3', 'rig.gaugeLength'])).toBeUndefined();
  });
});
