/** What stands for an empty top: it covers what is in use, what the target needs and what was read, within the limits. */
import { describe, expect, it } from 'vitest';
import type { TopLoadTrouble, WorksheetGuardCode } from '../../../src/core/worksheet.ts';
import {
  coveringTop,
  highestBorne,
  type TopSources,
} from '../../../src/worksheet/plan/default-top.ts';

const waiting = { ready: false, waitsFor: [] } as const;
const nothing: TopSources = {
  use: undefined,
  series: waiting,
  setting: waiting,
  theorySetting: waiting,
};
const measuredTo = (topTorque: number) => ({ ready: true, topTorque }) as TopSources['series'];
const needs = (torque: number, torqueHigh: number) =>
  ({ ready: true, torque, torqueHigh }) as TopSources['setting'];
const byScrew = needs(33, 60) as TopSources['theorySetting'];

describe('an empty top', () => {
  it('stands for nothing where nothing is known', () =>
    expect(coveringTop(nothing)).toBeUndefined());

  it.each([
    [{ use: 35 }, 35, 'use'],
    [{ use: 35, series: measuredTo(45) }, 45, 'readings'],
    [{ use: 45, series: measuredTo(45) }, 45, 'use'],
    [{ use: 35, series: measuredTo(30), setting: needs(38.4, 41.2) }, 41.2, 'targetByReadings'],
    [{ use: 35, setting: needs(33, 34), theorySetting: byScrew }, 35, 'use'],
    [{ use: 20, theorySetting: byScrew }, 33, 'targetByCalculation'],
  ] as const)('is the highest of what it has to cover: %j', (known, torque, from) =>
    expect(coveringTop({ ...nothing, ...known } as TopSources)).toEqual({ torque, from }),
  );

  it('is held by the makers and the steel, not by common practice', () => {
    const trouble = (code: WorksheetGuardCode, highest: number): TopLoadTrouble => ({
      guard: { code, level: 'stop', values: {}, inputs: [] },
      highest,
    });
    const practice = trouble('outsideCommonPractice', 28);
    expect(highestBorne({})).toBeUndefined();
    expect(highestBorne({ tooHigh: [practice] })).toBeUndefined();
    const both = [trouble('aboveBandLimit', 38), trouble('beyondYieldShare', 36), practice];
    expect(highestBorne({ tooHigh: both })).toBe(36);
  });
});
