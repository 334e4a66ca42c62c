/** What the readings of a screw mill come to: its whole worksheet, evaluated. */
import { evaluateWorksheet } from '../../../src/core/worksheet.ts';
import { numbersOf } from '../../core/fixtures/ready.ts';
import { bandOf } from '../../core/worksheet/fixtures/band-of.ts';
import { worksheetMills } from '../../core/worksheet/fixtures/mills.ts';
import type { MillFigures } from './mill.ts';

/** The mills whose tensioner the worksheet knows. */
export type ScrewMillLetter = keyof typeof worksheetMills;

export function worksheetFigures(letter: ScrewMillLetter): MillFigures {
  const results = evaluateWorksheet(worksheetMills[letter]);
  const measured = numbersOf(results.measured);
  const predicted = numbersOf(results.predicted);
  const other = bandOf(worksheetMills[letter]);
  return {
    'measured stress at top load (Pa)': measured.stress,
    'u(measured) (Pa)': measured.standardUncertainty,
    'effective degrees of freedom': measured.degreesOfFreedom,
    'coverage factor': measured.coverageFactor,
    'theory stress at top load (Pa)': predicted.stress,
    'u(theory) (Pa)': predicted.standardUncertainty,
    E_n: numbersOf(results.agreement).agreementNumber,
    'own efficiency': numbersOf(results.efficiency).efficiency,
    'setting for target': numbersOf(results.setting).torque,
    'other band: setting': numbersOf(other.byReadings).torque,
    'other band: expected dial (m)': numbersOf(other.stretch).stretch,
  };
}
