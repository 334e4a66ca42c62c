import { describe, expect, it } from 'vitest';
import { worksheetGuards } from '../../../../src/core/worksheet/decide/guards.ts';
import type { WorksheetGuard } from '../../../../src/core/worksheet/decide/rails.ts';
import type { GuardLevel } from '../../../../src/core/worksheet/decide/setting-guards.ts';
import type { Worksheet, WorksheetReading } from '../../../../src/core/worksheet/inputs.ts';
import { ready } from '../../../../src/core/worksheet/outcome.ts';
import { highStart } from '../../../../src/core/worksheet/own-assumptions.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { bandOf } from '../fixtures/band-of.ts';
import { demandingMill } from '../fixtures/demanding-mill.ts';
import { millA, millB } from '../fixtures/mills.ts';
import { stretched } from '../fixtures/stretched.ts';

const guardsOf = (worksheet: Worksheet) => evaluateWorksheet(worksheet).guards;
const codes = (worksheet: Worksheet) => guardsOf(worksheet).map(({ code }) => code);
const rows = (
  mill: Worksheet,
  change: (reading: WorksheetReading, row: number) => WorksheetReading,
) => ({
  ...mill,
  readings: mill.readings.map(change),
});

describe('worksheetGuards', () => {
  it('tells the reader of mill A how vague the zero is, and that the target lies above the readings', () =>
    expect(guardsOf(millA).map(({ code, level }) => [code, level])).toEqual([
      ['wideUncertainty', 'note'],
      ['wideUncertainty', 'note'],
      ['beyondReadings', 'note'],
    ]));

  it('puts what it finds in order: a stop of the other band before a note of the own one', () => {
    const guard = (level: GuardLevel): WorksheetGuard => ({
      code: 'nearYield',
      level,
      values: {},
      inputs: [],
    });
    const none = { ready: false, waitsFor: [] } as const;
    const own = ready({ found: [guard('note')] });
    const other = ready({ found: [guard('warn'), guard('stop')] });
    const rest = {
      ...{ series: none, zero: none, turns: none, setting: none, room: none },
      ...{
        measured: none,
        agreement: none,
        ways: [],
        allowed: undefined,
        allowedLoad: undefined,
        dialRuns: undefined,
      },
      verdict: { grade: 'waiting', reasons: [] } as const,
    };
    const unknown = { byReadings: none, byScrew: none, stretch: none, turns: none };
    const unlimited = { ...unknown, allowedLoad: undefined };
    const bands = [{ name: '', ...unlimited, rails: other }];
    const told = worksheetGuards(millA, { ...rest, rails: own, bands });
    expect(told.map(({ level }) => level)).toEqual(['stop', 'warn', 'note']);
  });

  it('tells of a target beyond the window, on either side, and leaves a maker’s edge to its rail', () => {
    const at = (stress: number, limit?: number) =>
      codes({ ...demandingMill, target: { ...millA.target, stress, makerLimitStress: limit } });
    expect(at(160e6)).toContain('aboveWindow');
    expect(at(50e6)).toContain('belowWindow');
    const { window, guards } = evaluateWorksheet({
      ...demandingMill,
      target: { ...millA.target, stress: 50e6 },
    });
    const edge = numbersOf(window).low?.stress;
    expect(guards.find(({ code }) => code === 'belowWindow')).toMatchObject({
      ...{ level: 'warn', values: { edge } },
    });
    expect(at(100e6).filter((code) => code.endsWith('Window'))).toEqual([]);
    expect(at(160e6, 100e6)).toContain('aboveBandLimit');
    expect(at(160e6, 100e6)).not.toContain('aboveWindow');
  });

  it('says of the window’s edge what share of today’s life it keeps, where life is what binds', () => {
    const target = { ...millA.target, stress: 160e6 };
    const room = (cause: 'life' | 'yield') => {
      const found = evaluateWorksheet({ ...demandingMill, target });
      const edge = { cause, stress: 120e6 };
      const window = { low: undefined, high: edge, isOpen: true, lows: [], highs: [edge] };
      return worksheetGuards(
        { ...demandingMill, target },
        {
          ...found,
          dialRuns: undefined,
          rails: ready({ found: [] }),
          allowed: undefined,
          room: ready(window),
        },
      ).filter(({ code }) => code === 'aboveWindow');
    };
    const { lifeKept } = demandingMill.demands;
    expect(room('life')).toMatchObject([{ level: 'note', values: { edge: 120e6, lifeKept } }]);
    expect(room('yield')).toMatchObject([{ level: 'warn', values: { edge: 120e6 } }]);
    expect(room('yield')[0]?.values).not.toHaveProperty('lifeKept');
  });

  it('tells of a target beyond the readings with both torques, and of none within them', () => {
    const { torque } = numbersOf(evaluateWorksheet(millA).setting);
    expect(torque).toBeGreaterThan(14.5);
    expect(guardsOf(millA)).toContainEqual({
      code: 'beyondReadings',
      level: 'note',
      values: { torque, topTorque: 14.5 },
      inputs: ['readings', 'target.stress'],
    });
    expect(codes({ ...millA, target: { ...millA.target, stress: 100e6 } })).toEqual([
      'wideUncertainty',
      'wideUncertainty',
    ]);
  });

  it('tells of the other band’s torque too, and warns where it lies far above the readings', () => {
    const bands = [
      ...millA.bands,
      { name: '', bodyWidth: 0.04, thickness: 0.0011, targetStress: 105e6 },
    ];
    const { torque } = numbersOf(bandOf({ ...millA, bands }, 1).byReadings);
    expect(torque).toBeGreaterThan(1.25 * 14.5);
    expect(guardsOf({ ...millA, bands })).toContainEqual({
      code: 'beyondReadings',
      level: 'warn',
      values: { torque, topTorque: 14.5 },
      inputs: ['bands.1.targetStress', 'readings'],
    });
  });

  it('says once, for all bands, to go no higher while theory and measurement do not agree', () => {
    const apart = stretched(millA, 0.4);
    expect(numbersOf(evaluateWorksheet(apart).agreement).verdict).toBe('measuredLower');
    expect(numbersOf(evaluateWorksheet(apart).setting).torque).toBeGreaterThan(14.5);
    const told = guardsOf(apart).filter(({ code }) => code === 'apart');
    expect(told).toEqual([
      {
        code: 'apart',
        level: 'warn',
        values: { topTorque: 14.5 },
        inputs: ['readings', 'tensioner'],
      },
    ]);
    expect(codes(apart)).not.toContain('beyondReadings');
    const higher = stretched(millB, 3); // its setting is far below the readings
    expect(codes(higher)).toContain('apart');
    expect(codes(millA)).not.toContain('apart');
  });

  it('tells of the screw that may back off once, whatever the number of bands', () => {
    const friction = {
      ...millA.tensioner.friction,
      kind: 'friction',
      low: 0.05,
      high: 0.1,
    } as const;
    const tensioner = { ...millA.tensioner, friction } as Worksheet['tensioner'];
    const { bands, guards } = evaluateWorksheet({ ...millA, tensioner });
    const isOfScrew = ({ code }: WorksheetGuard) => code === 'mayBackOff';
    expect(bands.filter(({ rails }) => numbersOf(rails).found.some(isOfScrew))).toHaveLength(1);
    expect(guards.filter(isOfScrew)).toHaveLength(1);
    expect(guards.some(({ code }) => code === 'wideUncertainty')).toBe(true);
  });

  it('tells from where on the dial was read, and which way it was taken to run', () => {
    const high = { ...millA, readings: millA.readings.filter((_, row) => row > 3) };
    expect(guardsOf(high)).toContainEqual({
      ...{ code: 'startsHigh', level: 'warn' },
      values: { share: highStart },
      inputs: ['readings'],
    });
    const untold = { ...millA, rig: { ...millA.rig, dialRunsBackwards: undefined } };
    expect(guardsOf(untold)).toContainEqual({
      ...{ code: 'dialDirectionTaken', level: 'note' },
      values: { backwards: 1 },
      inputs: ['rig.dialRunsBackwards'],
    });
    expect(codes(millA)).not.toContain('dialDirectionTaken');
  });

  it('sends nobody above the readings with a band that may then pass its limit', () => {
    const heavy = { name: '', bodyWidth: 0.04, thickness: 0.0011, targetStress: 105e6 };
    const beyond = (makerLimitStress: number) => {
      const target = { ...millA.target, stress: 100e6, makerLimitStress };
      const found = codes({ ...millA, target, bands: [heavy] });
      return found.filter((code) => code === 'beyondReadings').length;
    };
    expect([beyond(300e6), beyond(118e6)]).toEqual([1, 0]);
  });

  it('tells stops first', () => {
    const target = { ...millB.target, makerLimitStress: 111e6, stress: 112e6 };
    const mill = {
      ...millB,
      target,
      readings: [
        ...millB.readings,
        { ...(millB.readings[0] as WorksheetReading), dial: undefined },
      ],
    };
    const levels = guardsOf(mill).map(({ level }) => level);
    expect(levels[0]).toBe('stop');
    expect(levels.at(-1)).toBe('note');
    expect(codes(mill)).toContain('rowsLeftOut');
  });

  it('names the rows at or below the drag torque', () => {
    const mill = { ...millA, tensioner: { ...millA.tensioner, dragTorque: 1.6 } };
    expect(guardsOf(mill)).toContainEqual({
      code: 'rowsBelowDrag',
      level: 'note',
      values: { count: 1 },
      inputs: ['readings.0'],
    });
  });

  it('passes on the warnings of the zero, and turns that are missing', () => {
    const shaky = rows(millA, (reading, row) => ({
      ...reading,
      dial: (reading.dial as number) + (row % 2) * 20e-6,
    }));
    const { low, high } = numbersOf(evaluateWorksheet(shaky).zero);
    expect(guardsOf(shaky)).toContainEqual({
      code: 'wideInterval',
      level: 'warn',
      values: { low, high },
      inputs: ['readings'],
    });
    const few = rows(millA, (reading) => ({ ...reading, turns: 0.5 * (reading.turns as number) }));
    const { totalStiffness } = numbersOf(evaluateWorksheet(few).turns);
    expect(guardsOf(few)).toContainEqual({
      code: 'fewerTurnsThanBand',
      level: 'warn',
      values: { totalStiffness },
      inputs: ['readings'],
    });
  });
});
