/** In which unit a wrench shows torque, by how torques are typed. */
import { describe, expect, it } from 'vitest';
import type { Typed } from '../../src/form/typed.ts';
import { wrenchHasInchPounds } from '../../src/form/wrench.ts';

const sheet = (torques: readonly string[], other: Record<string, string> = {}): Typed => ({
  ...Object.fromEntries(torques.map((text, row) => [`readings.${row}.torque`, text])),
  ...other,
});

describe('a wrench has inch-pounds', () => {
  it.each([
    ['30 in-lb', '50 in·lbf', '75 inch pounds'],
    ['30 in-lb', '50 in-lb', '75'],
  ])('where most torques are typed in them: %s, %s, %s', (...torques) =>
    expect(wrenchHasInchPounds(sheet(torques))).toBe(true),
  );

  it.each([
    ['30', '50', '75 in-lb'],
    ['30 ft-lb', '50 ft·lbf', '4 kgf·m'],
    ['', 'in', '75'],
  ])('not where most are not: %s, %s, %s', (...torques) =>
    expect(wrenchHasInchPounds(sheet(torques))).toBe(false),
  );

  it('also by the torque in use alone, and not by another box', () => {
    expect(wrenchHasInchPounds({ 'use.torque': '180 in-lb' })).toBe(true);
    expect(wrenchHasInchPounds({ 'tensioner.dragTorque': '13 in-lb' })).toBe(false);
    expect(wrenchHasInchPounds({})).toBe(false);
  });
});
