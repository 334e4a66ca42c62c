/** A simulated class on the board: its stresses are the core's own, its spread that of the bench, and a slip is found. */
import { describe, expect, it } from 'vitest';
import { type BenchMill, benchMillAt, benchSeries } from '../../../src/core/bench.ts';
import { randomSource } from '../../../src/core/random.ts';
import { standardDeviation } from '../../../src/core/summary.ts';
import { evaluateWorksheet } from '../../../src/core/worksheet.ts';
import { typedOf, type WorksheetDocument } from '../../../src/form/document.ts';
import { sheetReader } from '../../../src/form/reading.ts';
import { bareUnits } from '../../../src/form/units.ts';
import { sheetOf } from '../../../src/teaching/board/reading.ts';
import { EMPTY, measuredRows, withSheet } from '../../../src/teaching/board/row.ts';
import { spreadWords } from '../../../src/teaching/board/spread-words.ts';
import { CLASS, classSheets, learnersSheet } from './class.ts';

const rowsOf = (sheets: readonly WorksheetDocument[]) =>
  measuredRows(sheets.map((sheet) => sheetOf(sheet, 'file')).reduce(withSheet, EMPTY));
const stresses = (sheets: readonly WorksheetDocument[]) =>
  rowsOf(sheets).map(({ stress }) => stress.value);

describe('a class of 25 at one mill', () => {
  it('has on the board the stresses and efficiencies that the core works out', () => {
    const sheets = classSheets(2);
    const rows = rowsOf(sheets);
    expect(rows).toHaveLength(CLASS.length);
    for (const [at, sheet] of sheets.entries()) {
      const typed = typedOf(sheet, bareUnits('us'));
      const { measured, efficiency } = evaluateWorksheet(sheetReader()(typed, 'us').worksheet);
      const row = rows.find(({ name }) => name === CLASS[at]);
      if (!row || !measured.ready || !efficiency.ready) throw new Error('each gives a stress');
      expect(row.stress.value / measured.stress).toBeCloseTo(1, 9);
      expect(row.stress.expanded / measured.expandedUncertainty).toBeCloseTo(1, 6);
      expect(row.efficiency).toMatchObject({ value: expect.closeTo(efficiency.efficiency, 9) });
    }
  });

  it.each([2, 4])(
    'differs as classes drawn from 200 others at mill %i do, but for one in 500',
    (seed) => {
      const others = Array.from({ length: 200 }, (_, at) => {
        const { stress } = sheetOf(learnersSheet('Other', 1000 + at, { seed }), 'file');
        return 'value' in stress ? stress.value : 0;
      });
      const { uniform } = randomSource(5);
      const anyone = () => others[Math.floor(uniform() * others.length)] as number;
      const drawn = Array.from({ length: 5000 }, () =>
        standardDeviation(Array.from({ length: CLASS.length }, anyone)),
      ).toSorted((a, b) => a - b);
      const own = standardDeviation(stresses(classSheets(seed)));
      expect(own).toBeGreaterThan(drawn[5] as number);
      expect(own).toBeLessThan(drawn[4994] as number);
    },
  );

  it('differs for no other reason than the bench’s chances: without them all read the same', () => {
    const mill = benchMillAt(2, 'clean');
    const quiet: BenchMill = {
      ...mill,
      hidden: { ...mill.hidden, repeatability: 1e-12, torqueScatter: 0 },
    };
    const torques = [10, 20, 30];
    const travels = (of: BenchMill) =>
      Array.from({ length: 25 }, (_, attempt) => benchSeries(of, torques, attempt).zero);
    expect(standardDeviation(travels(quiet))).toBeLessThan(1e-12);
    expect(standardDeviation(travels(mill))).toBeGreaterThan(1e-6);
  });

  it('need not have made a mistake', () => {
    for (const seed of [1, 2, 3, 4]) {
      const { finding } = spreadWords(rowsOf(classSheets(seed)), 'metric');
      expect(finding).toMatch(/^The class differs by \d\.\d\s%\. .*: nobody need have made/);
    }
  });

  it('is told with whom to begin where one wrote a gauge length that is 100 mm short', () => {
    const sheets = classSheets(2).map((sheet) => {
      const { label, 'rig.gaugeLength': gauge } = sheet.typed;
      if (label !== 'Gus') return sheet;
      return {
        ...sheet,
        typed: { ...sheet.typed, 'rig.gaugeLength': String(Number(gauge) - 100) },
      };
    });
    expect(spreadWords(rowsOf(sheets), 'metric').finding).toContain('look at Gus first.');
  });
});

const row = (id: number, value: number, { lead = 4e-3, topTorque = 50, own = 1e6 } = {}) => ({
  id,
  name: `N${id}`,
  label: '',
  from: '',
  verdict: 'good',
  stress: { value, expanded: 2 * own, own },
  efficiency: { value: 0.2, expanded: 0.02, own: 0.01 },
  topTorque,
  lead,
});

describe('the spread in words', () => {
  it('names who adds most where readings do not explain it', () => {
    const rows = [row(1, 99e6), row(2, 100e6), row(3, 101e6), row(4, 109e6)];
    const { finding, details } = spreadWords(rows, 'metric');
    expect(finding).toContain('One or more differ by more: look at N4 first.');
    expect(details[0]).toMatch(/^Stress: 102\.3\s±\s4\.6\sMPa, mean/);
    expect(details[1]).toMatch(/^Efficiency: 20\.?0?\s%/);
  });

  it('says that mills differ where the screws do', () =>
    expect(spreadWords([row(1, 99e6), row(2, 150e6, { lead: 5e-3 })], 'metric').finding).toContain(
      'different mills',
    ));

  it('sends to the efficiencies where torques differ', () => {
    const rows = [row(1, 99e6), row(2, 100e6, { topTorque: 60 })];
    expect(spreadWords(rows, 'us').details.join(' ')).toMatch(
      /Top torques are 36\.9\sto\s44\.3\sft·lbf/,
    );
  });

  it('says what is missing for a spread', () => {
    expect(spreadWords([], 'metric').finding).toBe('No sheet with a stress yet.');
    expect(spreadWords([row(1, 1e8)], 'metric').finding).toContain('add a second');
  });
});
