/** Factors between units. */
import { siValue } from '../../../src/units/conversions.ts';
import { FACTORS, type UnitSymbol } from '../../../src/units/factors.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';

const si = (amount: number, symbol: UnitSymbol): number => siValue(amount, FACTORS[symbol]);

/** Key of the case, symbol of ours, what it is in SI, printed decimals. */
const factors: readonly (readonly [string, UnitSymbol, string, number])[] = [
  ['inch_to_m', 'in', 'm', 4],
  ['lbf_to_N', 'lbf', 'N', 6],
  ['psi_to_Pa', 'psi', 'Pa', 3],
  ['ksi_to_Pa', 'ksi', 'Pa', 0],
  ['lbf_ft_to_Nm', 'ft·lbf', 'N·m', 6],
  ['kgf_to_N', 'kgf', 'N', 5],
  ['kgf_per_mm2_to_Pa', 'kgf/mm²', 'Pa', 0],
  ['bar_to_Pa', 'bar', 'Pa', 0],
  ['mil_to_m', 'thou', 'm', 7],
];

const factorAnswers = (): readonly Answer[] =>
  factors.flatMap(([key, symbol, unit, decimals]) => [
    printed(key, `1 ${symbol}`, unit, si(1, symbol), { decimals }),
    recomputed(key, `1 ${symbol}`, unit, si(1, symbol), 1e-15),
  ]);

/** The project knows differences of temperature only. */
const warmthAnswers = (): readonly Answer[] => [
  printed('difference_10F_in_K', 'a difference of 10 °F', 'K', si(10, '°F'), { relative: 1e-12 }),
  printed(
    'alpha_6.5e-6_per_F_in_per_K',
    'thermal growth of 6.5 × 10⁻⁶ per °F',
    '1/K',
    si(6.5, 'µin/(in·°F)'),
    {
      relative: 1e-12,
    },
  ),
];

export const unitAnswers: Answers = {
  'sp811-factors-a': factorAnswers,
  'temperature-difference': warmthAnswers,
};
