/** Every check and every remark in words: for screw and cylinder, in both unit systems, with its numbers. */
import { describe, expect, it } from 'vitest';
import { slipsOf } from '../../../src/core/worksheet/checks/slips.ts';
import { evaluateWorksheet, loadName, type Worksheet } from '../../../src/core/worksheet.ts';
import {
  causeSentence,
  ratioWords,
  remarkSentence,
} from '../../../src/worksheet/compare/cause-words.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { millD } from '../../core/worksheet/fixtures/hydraulic-mill.ts';
import { millA, millB, millC } from '../../core/worksheet/fixtures/mills.ts';
import { stretched } from '../../core/worksheet/fixtures/stretched.ts';

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
const tensioner = (worksheet: Worksheet, change: Partial<Worksheet['tensioner']>): Worksheet => ({
  ...worksheet,
  tensioner: { ...worksheet.tensioner, ...change },
});
const hydraulicLever = tensioner(millD, { advantage: 2 });
const rodded = tensioner(millD, { cylinder: { ...millD.tensioner.cylinder, rodDiameter: 0.02 } });

/** Sheets that are apart in many ways, and so ask for every check between them. */
const sheets = [0.04, 0.07, 0.1, 0.25, 0.5, 0.65, 0.8, 1, 1.35, 2, 2.5, 4, 9].flatMap((factor) =>
  [millA, millB, millC, millD, hydraulicLever, rodded].map((mill) => stretched(mill, factor)),
);

const said = (system: 'metric' | 'us') =>
  sheets.flatMap((worksheet) => {
    const shown = shownIn(system, loadName(worksheet.tensioner));
    const { causes, remarks } = evaluateWorksheet(worksheet);
    return [
      ...(causes?.causes ?? []).map((cause) => [
        worksheet.tensioner.kind,
        cause.name,
        plain(causeSentence(cause, shown)),
      ]),
      ...remarks.map((remark) => [
        worksheet.tensioner.kind,
        remark.code,
        plain(remarkSentence(remark, shown)),
      ]),
    ];
  });

describe('checks in words', () => {
  it.each(['metric', 'us'] as const)('have all their numbers, in %s units', (system) => {
    const all = said(system);
    expect(all.length).toBeGreaterThan(100);
    for (const [, name, sentence] of all)
      expect([name, sentence]).not.toEqual([name, expect.stringMatching(/NaN|undefined|Infinity/)]);
  });

  it('reach every slip that the core knows', () => {
    const found = new Set(said('metric').map(([, name]) => name));
    for (const mill of [hydraulicLever, rodded, millA])
      for (const { name } of slipsOf(mill, { advantage: 2, strandCount: 2 }))
        expect(found).toContain(name);
  });

  it('speak of no wrench or thread to who has a cylinder, and of no piston to who has a screw', () => {
    for (const [kind, , sentence] of said('metric'))
      expect(sentence).not.toMatch(
        kind === 'cylinder'
          ? /wrench|thread|collar|screw|torque/i
          : /piston|cylinder|hose|gauge(?! length)|seal/i,
      );
  });

  it('say what would make the two agree', () => {
    const shown = shownIn('metric', 'pressure');
    const needed = { now: 0.04, low: 0.022, high: 0.024 };
    expect(plain(causeSentence({ name: 'piston', values: needed }, shown))).toBe(
      'Measure the bore of the cylinder, not its outside: 23.0 ± 1.0 mm would explain it; you wrote 40 mm.',
    );
    const lever = (now: number) =>
      causeSentence({ name: 'lever', values: { now, low: 0.31, high: 0.35 } }, shown);
    expect(plain(lever(2))).toContain('0.33');
    expect(lever(1)).not.toMatch(/\d/); // no number to choose so that they agree
    expect(ratioWords(1 / 3, shown)).toBe('You measured 0.33 times what the cylinder should give.');
  });
});
