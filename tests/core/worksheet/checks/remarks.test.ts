import { describe, expect, it } from 'vitest';
import { worksheetRemarks } from '../../../../src/core/worksheet/checks/remarks.ts';
import type { Worksheet } from '../../../../src/core/worksheet/inputs.ts';
import { evaluateWorksheet } from '../../../../src/core/worksheet.ts';
import { numbersOf } from '../../fixtures/ready.ts';
import { millD } from '../fixtures/hydraulic-mill.ts';
import { millA, millB, millC } from '../fixtures/mills.ts';
import { stretched } from '../fixtures/stretched.ts';

const remarksOf = (worksheet: Worksheet) =>
  worksheetRemarks(worksheet, evaluateWorksheet(worksheet));
const tensioner = (worksheet: Worksheet, change: Partial<Worksheet['tensioner']>): Worksheet => ({
  ...worksheet,
  tensioner: { ...worksheet.tensioner, ...change },
});

describe('worksheetRemarks', () => {
  it('says nothing of a mill that passes on what such mills do', () => {
    for (const mill of [millA, millB, millD]) expect(remarksOf(mill)).toEqual([]);
    expect(remarksOf({ ...millD, readings: [] })).toEqual([]);
  });

  it('tells that less arrives than the worst seal leaves', () => {
    const [remark, ...others] = remarksOf(stretched(millD, 1 / 3));
    const { efficiency } = numbersOf(evaluateWorksheet(stretched(millD, 1 / 3)).efficiency);
    expect(others).toEqual([]);
    expect(remark).toMatchObject({
      code: 'tooLittleArrives',
      values: { efficiency, usual: 0.94 },
    });
  });

  it('tells it too where a seal was typed that makes the two agree', () => {
    const cylinder = { ...millD.tensioner.cylinder, sealLow: 0.64, sealHigh: 0.7 };
    const fitted = tensioner(stretched(millD, 1 / 3), { cylinder });
    expect(numbersOf(evaluateWorksheet(fitted).agreement).verdict).toBe('agree');
    const [remark] = remarksOf(fitted);
    expect(remark?.code).toBe('tooLittleArrives');
    expect(remark?.asChosen).toBeCloseTo(0.33 / 0.94, 12);
  });

  it('tells of a screw below a dry thread on a dry washer, and above a greased one on a bearing', () => {
    expect(remarksOf(stretched(millB, 1 / 3)).map(({ code }) => code)).toEqual([
      'tooLittleArrives',
    ]);
    expect(remarksOf(stretched(millB, 3)).map(({ code }) => code)).toEqual(['tooMuchArrives']);
  });

  it('holds a screw against what is usual, whatever efficiency was typed', () => {
    const { efficiency } = numbersOf(evaluateWorksheet(stretched(millB, 3)).efficiency);
    const friction = { kind: 'efficiency', low: 0.9 * efficiency, high: 1.1 * efficiency } as const;
    const fitted = tensioner(stretched(millB, 3), { friction });
    expect(numbersOf(evaluateWorksheet(fitted).agreement).verdict).toBe('agree');
    const [remark] = remarksOf(fitted);
    expect(remark?.code).toBe('tooMuchArrives');
    expect(remark?.asChosen).toBeCloseTo(efficiency / (remark?.values['usual'] ?? 0), 12);
  });

  it('tells that the two agree only by the lever that was typed', () => {
    const fitted = tensioner(stretched(millD, 1 / 3), { advantage: 1 / 3 });
    expect(remarksOf(fitted)).toEqual([
      { code: 'agreesByLever', values: { advantage: 1 / 3 }, asChosen: 1 / 3 },
    ]);
    expect(remarksOf(millC).map(({ code }) => code)).toEqual(['agreesByLever']);
    expect(remarksOf(tensioner(millD, { advantage: 1.02 }))).toEqual([]);
    expect(remarksOf(tensioner(millD, { advantage: 1 / 3 })).map(({ code }) => code)).not.toContain(
      'agreesByLever',
    );
  });
});
