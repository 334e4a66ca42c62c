/**
 * What the spread of a class means, in words.
 * Units: SI in, the reader's out.
 * Source: the ratio and its limit, core/agreement.
 */
import { type Spread, spreadOf } from '../../core/agreement.ts';
import { formatQuantity, formatRange } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { isMeasured, type Measured, type MeasuredRow } from './row.ts';

const ALIKE = 0.02; // share by which torques, or leads, may differ and still be the same

/** The finding, then what lies behind it. */
export interface SpreadWords {
  readonly finding: string;
  readonly details: readonly string[];
}

const share = (value: number, of: number) =>
  formatQuantity(value / of, 'percent', 'metric', { digits: 2 });

/** The spread of those results whose own uncertainty is known; undefined for fewer than two. */
export function spreadOfMeasured(results: readonly Measured[]): Spread | undefined {
  const known = results.filter(({ own }) => own > 0);
  if (known.length < 2) return undefined;
  return spreadOf(known.map(({ value, own }) => ({ value, standard: own })));
}

function areAlike(values: readonly number[]): boolean {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return high - low <= ALIKE * high;
}

/** Whether the sheets are of one screw, as far as they name it. */
const isOneMill = (rows: readonly MeasuredRow[]): boolean =>
  areAlike(rows.flatMap(({ lead }) => (lead === undefined ? [] : [lead])));

/** Whether uncertain readings explain the spread, and if not, with whom to begin. */
function verdict(rows: readonly MeasuredRow[], spread: Spread): string {
  const { standardDeviation, mean, expected, furthest, isExplained } = spread;
  const differs = `The class differs by ${share(standardDeviation, mean)}.`;
  if (!isOneMill(rows))
    return `${differs} The sheets have different screws, so they are different mills: mills differ.`;
  const explained = `Uncertain readings alone explain about ${share(expected, mean)}`;
  if (isExplained) return `${differs} ${explained}: nobody need have made a mistake.`;
  const name = rows[furthest]?.name ?? '';
  return `${differs} ${explained}. One or more differ by more: look at ${name} first.`;
}

function efficiencyLine(rows: readonly MeasuredRow[]): readonly string[] {
  const known = rows.flatMap(({ efficiency }) => (isMeasured(efficiency) ? [efficiency] : []));
  const spread = spreadOfMeasured(known);
  if (!spread) return [];
  const { mean, standardDeviation } = spread;
  const says = formatQuantity(mean, 'percent', 'metric', { uncertainty: standardDeviation });
  return [`Efficiency: ${says}, mean and standard deviation.`];
}

function torqueLine(rows: readonly MeasuredRow[], system: UnitSystem): readonly string[] {
  const torques = rows.map(({ topTorque }) => topTorque);
  if (areAlike(torques)) return [];
  const range = formatRange(Math.min(...torques), Math.max(...torques), 'torque', system);
  return [`Top torques are ${range}, and stress rises with torque: compare the efficiencies.`];
}

/** The spread in words, of the rows that the chart shows. */
export function spreadWords(all: readonly MeasuredRow[], system: UnitSystem): SpreadWords {
  if (all.length === 0) return { finding: 'No sheet with a stress yet.', details: [] };
  const rows = all.filter(({ stress }) => stress.own > 0);
  const spread = spreadOfMeasured(rows.map(({ stress }) => stress));
  if (!spread) return { finding: 'One stress alone has no spread: add a second.', details: [] };
  const { mean, standardDeviation, ratio, limit } = spread;
  const stress = formatQuantity(mean, 'stress', system, { uncertainty: standardDeviation });
  const number = (value: number) => formatQuantity(value, 'ratio', 'metric', { digits: 2 });
  return {
    finding: verdict(rows, spread),
    details: [
      `Stress: ${stress}, mean and standard deviation of ${rows.length} sheets.`,
      ...efficiencyLine(rows),
      ...torqueLine(rows, system),
      `Birge ratio: ${number(ratio)}. Chance alone seldom passes ${number(limit)}.`,
    ],
  };
}
