import { describe, expect, it } from 'vitest';
import { dialFalls } from '../../../../src/core/worksheet/measure/dial-falls.ts';
import { wrenchReading } from '../../../../src/core/worksheet/own-assumptions.ts';

const torques = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const perLoad = 20e-6; // m per N·m
const repeatability = 5e-6; // m
const series = (change: (stretch: number, at: number) => number = (stretch) => stretch) => ({
  rows: torques.map((_, at) => at),
  series: torques.map(() => 1),
  torques,
  elongations: torques.map((torque, at) => change(perLoad * torque, at)),
  topTorque: 10,
  repeatability,
  loadReading: wrenchReading,
});
const at = (row: number, by: number) => (stretch: number, place: number) =>
  place === row ? stretch + by : stretch;

/** Twice the scatter of a difference of two readings at 7 N·m, worked out here: dial 5 µm, load 0.1 N·m of 20 µm each. */
const chance = 2 * Math.sqrt(2 * (5 ** 2 + (20 * 0.1) ** 2)) * 1e-6;

describe('dialFalls', () => {
  it('finds nothing in a series that rises', () => expect(dialFalls(series())).toEqual([]));

  it('names the row at which the dial goes back, and by how much', () => {
    const [fall, ...others] = dialFalls(series(at(6, -50e-6)));
    expect(others).toEqual([]);
    expect(fall?.row).toBe(6);
    expect(fall?.back).toBeCloseTo(30e-6, 12);
  });

  it('passes over a wobble within the uncertainty of two readings, and tells what is beyond it', () => {
    expect(chance).toBeCloseTo(15.2e-6, 7);
    const back = (by: number) => dialFalls(series(at(6, -perLoad - by))).map(({ row }) => row);
    expect(back(0.98 * chance)).toEqual([]);
    expect(back(1.02 * chance)).toEqual([6]);
  });

  it('allows a toe that turns the dial back before it first rises, and none after', () => {
    const toe = series((stretch, place) => stretch + 200e-6 * 0.3 ** place);
    expect(toe.elongations[1]).toBeLessThan((toe.elongations[0] as number) - chance);
    expect(dialFalls(toe)).toEqual([]);
    const late = series((stretch, place) => stretch - (place === 2 ? 60e-6 : 0));
    expect(dialFalls(late).map(({ row }) => row)).toEqual([2]);
  });

  it('tells a fall high up also where nothing rose before', () => {
    const high = series();
    const upper = { rows: [5, 6, 7, 8, 9], series: [1, 1, 1, 1, 1], torques: torques.slice(5) };
    const elongations = [120e-6, 90e-6, 160e-6, 180e-6, 200e-6];
    expect(dialFalls({ ...high, ...upper, elongations }).map(({ row }) => row)).toEqual([6]);
  });

  it('compares no row with one of another series, nor with one at a higher load', () => {
    const apart = series(at(5, -150e-6));
    expect(dialFalls(apart).map(({ row }) => row)).toEqual([5]);
    expect(dialFalls({ ...apart, series: torques.map((_, row) => (row < 5 ? 1 : 2)) })).toEqual([]);
    const again = { ...series(), torques: torques.map((torque, row) => (row === 5 ? 2 : torque)) };
    const lower = again.elongations.map((stretch, row) => (row === 5 ? 2 * perLoad : stretch));
    expect(dialFalls({ ...again, elongations: lower })).toEqual([]);
  });

  it('leaves a series that falls as a whole, or is no line, to others', () => {
    expect(dialFalls(series((stretch) => -stretch))).toEqual([]);
    const short = { rows: [0, 1], series: [1, 1], torques: [8, 9], elongations: [2e-4, 1e-4] };
    expect(dialFalls({ ...series(), ...short })).toEqual([]);
    expect(
      dialFalls({ ...series(), rows: [0], series: [1], torques: [3], elongations: [0] }),
    ).toEqual([]);
  });
});
