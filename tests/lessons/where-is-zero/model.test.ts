/** What the lesson claims of wrong zeros, by hand and against the bench. */
import { describe, expect, it } from 'vitest';
import { benchSeries, benchStress } from '../../../src/core/bench.ts';
import { millOfSeed } from '../../../src/lessons/where-is-zero/mill.ts';
import { asked, whereIsZero as model } from '../../../src/lessons/where-is-zero/model.ts';
import { found } from '../../../src/lessons/where-is-zero/series/found.worked.ts';
import { readings } from '../../../src/lessons/where-is-zero/series/readings.worked.ts';
import { takenSeries } from '../../../src/lessons/where-is-zero/series.ts';
import {
  SERIES,
  seedOfRepeat,
  seedOfSeries,
  TORQUES,
} from '../../../src/lessons/where-is-zero/taking.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';

const at = (inputs: Partial<InputsOf<typeof model>>) =>
  evaluated(model, inputsAt(model, inputs, 'metric'));

describe('the band that straightens', () => {
  it('has the bench’s stress for the same mill, at every torque of a series', () => {
    for (const torque of TORQUES)
      expect(at({ load: torque }).stress).toBeCloseTo(benchStress(millOfSeed(3), torque), 3);
  });
  it('moves the dial by the whole curl besides the stretch: 14 mm · 0.4 m/25 m, by hand', () => {
    const { dialFromSlack, stretch, slackStress, stress } = at(asked);
    expect(dialFromSlack - stretch).toBeCloseTo(0.224e-3, 8);
    expect(slackStress - stress).toBeCloseTo((205e9 * 0.224e-3) / 0.4, -3);
  });
  it('turns the dial back by as much where the bar is on the outer side', () => {
    const [hollow, outer] = [at({ load: 3 }), at({ load: 3, side: 'outer' })];
    expect(outer.straightened).toBeCloseTo(-hollow.straightened, 12);
    expect(outer.stretch).toBe(hollow.stretch);
  });
  it('leaves a third of the curl for each 8 MPa', () => {
    const { stress, straightened, curl } = at({ load: 1.74 });
    expect(stress / 8e6).toBeCloseTo(1, 2);
    expect(1 - straightened / curl).toBeCloseTo(1 / Math.E, 2);
  });
});

describe('a wrong zero', () => {
  it('set on the slack band reads too high on the hollow side, too low on the outer', () => {
    expect(at({}).slackError).toBeGreaterThan(100e6);
    expect(at({ side: 'outer' }).slackError).toBeLessThan(-100e6);
  });
  it('set where the band pulls misses what it carries by then, once the curl is gone', () => {
    const { setError, stressWhenSet } = at({ setAt: 6 });
    expect(setError).toBeLessThan(-40e6);
    expect(setError / -stressWhenSet).toBeCloseTo(1, 1);
  });
  it('set at the no-load torque is the slack band’s', () => {
    const { setError, slackError } = at({ setAt: model.inputs.setAt.min });
    expect(setError).toBeCloseTo(slackError, 3);
  });
});

describe('the series to choose from', () => {
  const seeds = Array.from({ length: SERIES }, (_, place) => seedOfSeries(place + 1));

  it('are the bench’s own, with its true zero', () => {
    for (const [place, seed] of seeds.entries()) {
      const { zero, readings: steps } = benchSeries(millOfSeed(seed), TORQUES);
      const { dial = 0, wholeTurns = 0 } = steps.at(-1) ?? {};
      const travel = (steps[0]?.dial ?? 0) - dial + wholeTurns * 1e-3;
      expect(readings[place]?.at(-1)?.reading).toBeCloseTo(travel, 8);
      expect(found[place]?.trueZero).toBeCloseTo(zero, 8);
    }
  });
  it('hold their true zero in the interval from all readings, and none is free of scatter', () => {
    const kept = found.filter(
      ({ fullLow, fullHigh, trueZero }) => fullLow <= trueZero && trueZero <= fullHigh,
    );
    expect(kept).toHaveLength(SERIES);
    for (const { classroomLow, classroomHigh } of found)
      expect(classroomHigh - classroomLow).toBeGreaterThan(5e-6); // the step of the dial
  });
  it('curl either way', () => {
    const signs = found.map(({ trueZero }) => Math.sign(trueZero));
    expect(signs.filter((sign) => sign > 0).length).toBeGreaterThan(5);
    expect(signs.filter((sign) => sign < 0).length).toBeGreaterThan(5);
  });
  it('leave out only readings among the first four', () => {
    for (const series of readings)
      expect(series.findLastIndex(({ inToe }) => inToe)).toBeLessThan(4);
  });
  it('are none of those that are repeated', () => {
    expect(Math.max(...seeds)).toBeLessThan(seedOfRepeat(0));
    expect(takenSeries(seedOfRepeat(0))).not.toEqual(takenSeries(seedOfRepeat(1)));
  });
});

describe('the reader’s zero', () => {
  it('costs E/L₀ of stress for each metre that it is off, with the other sign', () => {
    const { trueZero } = at({ series: 2 });
    const { eyeError } = at({ series: 2, eyeZero: trueZero + 20e-6 });
    expect(eyeError).toBeCloseTo(-10.25e6, -1); // 205 GPa · 20 µm/400 mm, by hand
  });
  it('is right where it is the true one, whichever the series', () => {
    for (const series of [1, 7, SERIES]) {
      const { trueZero } = at({ series });
      expect(at({ series, eyeZero: trueZero }).eyeError).toBeCloseTo(0, 6);
    }
  });
});

describe('what the folds tell', () => {
  const { oneSeries, twoSeries, threeSeries, earlyStart, laterStart, ...rest } = at({});
  it('is that each further series helps less, and a later start a little', () => {
    expect(twoSeries).toBeLessThan(0.85 * oneSeries);
    expect(threeSeries).toBeLessThan(twoSeries);
    expect(oneSeries - twoSeries).toBeGreaterThan(twoSeries - threeSeries);
    expect(laterStart).toBeLessThan(earlyStart);
    expect(laterStart).toBeGreaterThan(0.8 * earlyStart);
  });
  it('is that four times the readings shrink the interval under a long toe, but not the miss', () => {
    expect(rest.manyReach).toBeLessThan(0.4 * rest.longToeReach);
    expect(rest.manyMiss).toBeGreaterThan(0.95 * rest.longToeMiss);
    expect(rest.longToeMiss).toBeGreaterThan(5 * rest.longToeReach);
  });
  it('is that a bar’s weight dies as one over the tension, and the curl is there near a wheel', () => {
    expect(rest.weightAtQuarter / rest.weightAtTop).toBeCloseTo(4, 9);
    expect(rest.weightAtTop).toBeCloseTo((0.014 * 6) / (2 * 29e-6 * rest.topStress), 9);
    expect(rest.nearCurl).toBeGreaterThan(10 * rest.middleCurl);
  });
});
