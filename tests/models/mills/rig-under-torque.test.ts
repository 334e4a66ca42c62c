/** The classroom rig: worked out a second time by hand, and what it does at its ends. */
import { describe, expect, it } from 'vitest';
import { STRIP } from '../../../src/lessons/stiff-spring/model.ts';
import { defaults, evaluated, inputsAt } from '../../../src/models/define-model.ts';
import { BUILD, RIG } from '../../../src/models/mills/classroom-rig.ts';
import { classroomRig } from '../../../src/models/mills/rig-under-torque.ts';

const at = (torque: number) =>
  evaluated(classroomRig, inputsAt(classroomRig, { torque }, 'metric'));
const relative = (ours: number, theirs: number) => Math.abs(ours / theirs - 1);

describe('the classroom rig', () => {
  it('pulls as thread and washer let it: M12 with its lead of 1.75 mm, worked by hand', () => {
    // Source: exact square-to-the-thread form of the screw (Shigley 8-2), derived here; pitch diameter 10.863 mm of ISO 724, from memory.
    const [lead, pitchDiameter, lean] = [1.75e-3, 10.863e-3, Math.PI / 6];
    const climb = Math.atan(lead / (Math.PI * pitchDiameter));
    const rub = Math.atan(RIG.friction / Math.cos(Math.atan(Math.tan(lean) * Math.cos(climb))));
    const [outer, inner] = [24e-3, 13e-3];
    const washer = (outer + inner) / 2;
    const torqueForNewton =
      (pitchDiameter / 2) * Math.tan(climb + rub) + (RIG.friction * washer) / 2;
    expect(relative(at(4).pull, (4 - RIG.dragTorque) / torqueForNewton)).toBeLessThan(0.02); // a worn washer rubs a little further out
  });

  it('has one strand: the stress is the whole pull over the section', () => {
    const { pull, stress, area, stretch, gaugeLength, youngsModulus } = at(4);
    expect(relative(stress, pull / 16e-6)).toBeLessThan(1e-12);
    expect(relative(area, 16e-6)).toBeLessThan(1e-12);
    expect(relative(stretch, (stress / youngsModulus) * gaugeLength)).toBeLessThan(1e-12);
  });

  it('pulls nothing up to the no-load torque, and in proportion to what is above it', () => {
    expect(at(RIG.dragTorque).pull).toBe(0);
    expect(at(0).stress).toBe(0);
    expect(relative(at(4.2).pull, 2 * at(2.2).pull)).toBeLessThan(1e-12);
  });

  it('gives a range about its prediction, and stays below the limit of its steel', () => {
    const { stressLow, stress, stressHigh } = at(4);
    expect(stressLow).toBeLessThan(stress);
    expect(stressHigh).toBeGreaterThan(stress);
    expect(at(8).stressHigh).toBeLessThan(STRIP.elasticLimit / 2);
  });

  it('turns its screw as far as strip and frame give', () => {
    const { pull, turns, lead, betweenGrips, youngsModulus, area, frameStiffness } = at(4);
    const give = pull * (betweenGrips / (youngsModulus * area) + 1 / frameStiffness);
    expect(relative(turns, give / lead)).toBeLessThan(1e-12);
  });

  it('has a strip, tubes and a frame that fit into each other', () => {
    const { stripLength, tubeLength, frameLength, betweenGrips, gripLength } = at(4);
    expect(stripLength).toBeCloseTo(betweenGrips + 2 * gripLength, 12);
    expect(tubeLength - stripLength).toBeCloseTo(BUILD.takeUp, 12);
    expect(frameLength - tubeLength).toBeCloseTo(2 * BUILD.plateThickness, 12);
    expect(2 * BUILD.tube + BUILD.tubeGap).toBeLessThan(BUILD.plateWidth);
    expect(BUILD.gripWidth).toBeLessThan(BUILD.tubeGap);
  });

  it('stores half the pull times what strip and frame give, at the slipperiest friction of its limit', () => {
    const { mostPull, mostStored, area, betweenGrips, youngsModulus } = at(4);
    expect(relative(mostPull, at(RIG.mostTorque).stressHigh * area)).toBeLessThan(1e-12);
    const give = mostPull * (betweenGrips / (youngsModulus * area) + 1 / RIG.frameStiffness);
    expect(relative(mostStored, (mostPull * give) / 2)).toBeLessThan(1e-12);
    expect(mostPull / area).toBeLessThan(STRIP.elasticLimit / 2);
  });

  it('asks of the bolts of a grip what holds twice the largest pull, worked by hand', () => {
    // Source: M8, lead 1.25 mm, pitch diameter 7.188 mm of ISO 724, from memory; the same form of the screw as above.
    const [lead, pitchDiameter, washer] = [1.25e-3, 7.188e-3, 10.4e-3];
    const climb = Math.atan(lead / (Math.PI * pitchDiameter));
    const lean = Math.atan(Math.tan(Math.PI / 6) * Math.cos(climb));
    const rub = Math.atan(RIG.friction / Math.cos(lean));
    const press = (2 * at(4).mostPull) / (2 * BUILD.gripFriction) / 2;
    const byHand =
      press * ((pitchDiameter / 2) * Math.tan(climb + rub) + (RIG.friction * washer) / 2);
    expect(relative(at(4).gripTorque, byHand)).toBeLessThan(1e-3);
  });

  it('starts on a stress that a small mill uses', () => {
    const { stress } = evaluated(classroomRig, defaults(classroomRig));
    expect(stress).toBeGreaterThan(60e6);
    expect(stress).toBeLessThan(170e6);
  });
});
