/** The stress of one lap, piece by piece, and where its place is on the drawn mill. */
import { describe, expect, it } from 'vitest';
import { dotPlace } from '../../../src/lessons/round-the-wheel/lap/dot-place.ts';
import { lapEnds, stressAt } from '../../../src/lessons/round-the-wheel/lap.ts';
import { asked, roundTheWheel as model } from '../../../src/lessons/round-the-wheel/model.ts';
import { evaluated, inputsAt } from '../../../src/models/define-model.ts';

const values = evaluated(model, inputsAt(model, asked, 'metric'));
const stress = (place: number) => stressAt(place, values.strandShare, values);
const ends = lapEnds(values.strandShare);

describe('the lap', () => {
  it('is two strands and two half wheels, as long as the band', () => {
    const strand = ends.slack;
    expect(2 * strand + 2 * (ends.idle - ends.slack)).toBeCloseTo(1, 12);
    expect(strand * values.loopLength).toBeCloseTo(1.35, 12); // wheel centers of mill A
  });

  it('goes up on a wheel by the bend at the gullets and comes down after it', () => {
    expect(stress(0.1)).toBe(values.slackStress);
    expect(stress(ends.slack) - stress(0.1)).toBeCloseTo(values.edgeBend, 3);
    expect(stress(ends.idle)).toBe(values.slackStress);
  });

  it('is pulled tighter after the log', () => {
    expect(stress(ends.log - 1e-9)).toBe(values.slackStress);
    expect(stress(ends.log)).toBe(values.tightStress);
    expect(stress(ends.log) - stress(0.1)).toBeCloseTo(9e3 / 24 / 29e-6, 0); // P/(v·A), by hand
  });

  it('has its peak where the tight strand meets the driving wheel, and nowhere a higher one', () => {
    expect(stress(ends.cutting)).toBeCloseTo(values.peak, 3);
    const all = Array.from({ length: 1001 }, (_, place) => stress(place / 1000));
    expect(Math.max(...all)).toBeLessThanOrEqual(values.peak + 1);
  });

  it('closes: the end of the driving wheel is bent and slack', () =>
    expect(stress(1)).toBeCloseTo(values.slackStress + values.edgeBend, 3));

  it('is evenly loaded without a cut', () => {
    const idle = evaluated(model, inputsAt(model, { ...asked, power: 0 }, 'metric'));
    expect(idle.tightStress).toBeCloseTo(idle.slackStress, 3);
  });
});

describe('the dot', () => {
  const loop = { x: 100, y: 50, half: 40, radius: 20 };
  const dot = (place: number) => dotPlace(place, 0.3, loop);

  it.each([
    [0, 60, 30],
    [0.15, 100, 30],
    [0.3, 140, 30],
    [0.4, 160, 50],
    [0.5, 140, 70],
    [0.65, 100, 70],
    [0.9, 40, 50],
    [1, 60, 30],
  ])('at %s of the lap is at %s, %s', (place, x, y) => {
    expect(dot(place).x).toBeCloseTo(x, 9);
    expect(dot(place).y).toBeCloseTo(y, 9);
  });

  it('moves evenly along the band', () => {
    const steps = Array.from({ length: 100 }, (_, step) => {
      const [from, to] = [dot(step / 100), dot((step + 1) / 100)];
      return Math.hypot(to.x - from.x, to.y - from.y);
    });
    // strands of 80 in 0.3 of a lap, half wheels of 62.8 in 0.2
    expect(Math.max(...steps)).toBeLessThan(3.2);
    expect(Math.min(...steps)).toBeGreaterThan(2.5);
  });
});
