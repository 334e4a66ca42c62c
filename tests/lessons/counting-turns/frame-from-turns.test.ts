import { describe, expect, it } from 'vitest';
import {
  frameFromTurns,
  RIG,
  TURN_STEPS,
} from '../../../src/lessons/counting-turns/frame-from-turns.ts';
import { MILLS } from '../../../src/lessons/counting-turns/mills.worked.ts';
import { countingTurns } from '../../../src/lessons/counting-turns/model.ts';
import { giveTogether, millArea, nutLead } from '../../../src/lessons/counting-turns/nut-travel.ts';
import { defaults, evaluated } from '../../../src/models/define-model.ts';

/** What turns and dial show between two loads on the first mill, without any error; source: derived here. */
function faultless(stress: number) {
  const mill = MILLS.stiffFrame;
  const turns = giveTogether(mill, 2 * stress * millArea(mill)) / nutLead(mill);
  return { turns, stretch: (stress / 205e9) * RIG.gaugeLength, turnStep: TURN_STEPS.fiveDegrees };
}

describe('the frame out of turns and stretch', () => {
  it('is the frame that made them', () => {
    const { frameFound } = frameFromTurns(faultless(70e6));
    expect(frameFound / 8e6).toBeCloseTo(1, 9);
  });
  it('lies between its bounds, and the true frame lies there for the readings of a simulated series', () => {
    const reading = { turns: 23 / 72, stretch: 0.135e-3, turnStep: 1 / 72 };
    const { frameFound, frameLow, frameHigh } = frameFromTurns(reading);
    expect(frameLow).toBeLessThan(frameFound);
    expect(frameFound).toBeLessThan(frameHigh);
    expect(frameLow).toBeLessThan(8e6);
    expect(frameHigh).toBeGreaterThan(8e6);
  });
  it('shows with fine marks, not with quarter turns: then only a least value is left', () => {
    const reading = faultless(70e6);
    const resolved = Object.values(TURN_STEPS).map(
      (turnStep) => frameFromTurns({ ...reading, turnStep }).resolved,
    );
    expect(resolved).toEqual([1, 1, 1, 0]);
    const { frameFound, frameHigh, frameLow } = frameFromTurns({ ...reading, turnStep: 1 / 4 });
    expect([frameFound, frameHigh]).toEqual([0, 0]);
    expect(frameLow).toBeGreaterThan(0);
    expect(frameLow).toBeLessThan(8e6);
  });
  it('does not show where a small step is read, however fine the marks: the dial is too coarse', () => {
    expect(frameFromTurns(faultless(20e6)).resolved).toBe(0);
    expect(frameFromTurns(faultless(60e6)).resolved).toBe(1);
  });
  it('gives nothing where the turns are fewer than the band alone needs', () => {
    const fewer = { ...faultless(70e6), turns: 0.1 };
    const { frameGive, resolved, frameLow } = frameFromTurns(fewer);
    expect(frameGive).toBeLessThan(0);
    expect([resolved, frameLow]).toEqual([0, 0]);
  });
  it('is what the nut travelled beyond half of what the loop grew', () => {
    const { frameGive, nutTravel, bandWay } = frameFromTurns(faultless(70e6));
    expect(frameGive).toBeCloseTo(nutTravel - bandWay, 12);
  });
});

describe('the catch', () => {
  it('is 5 to 8 % before the band is rolled round, 61 % where nothing slips: derived here', () => {
    const values = evaluated(countingTurns, defaults(countingTurns));
    expect(values.slipperyExcess).toBeCloseTo(0.0573, 4);
    expect(values.gripExcess).toBeCloseTo(0.0835, 4);
    expect(1 + values.lockedExcess).toBeCloseTo(8.80741 / 5.48334, 5);
  });
});
