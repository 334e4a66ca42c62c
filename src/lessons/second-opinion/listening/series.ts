/**
 * A series of tones: fₙ = n·F·(1 + b·n²), the tones of a stiff string, fitted through some peaks. The fundamental need
 * not be among them.
 * Units: Hz; b has none.
 * Source: weighted least squares: `gum`, H.3, from memory; the series: core/span/pluck; what is believed of b before is
 * one reading more.
 */
import type { Peak } from './peaks.ts';

/** A peak with its number in the series. */
export interface Tone extends Peak {
  readonly number: number;
}

/** What stiffness does to the tones: b = sharpening/F², 0 for a bare string. */
export type Sharpening = number; // Hz²

/** A fitted series; `fundamental` is its first tone, F(1 + b). */
export interface Series {
  readonly base: number; // F, Hz
  readonly bend: number; // F·b, Hz
  readonly fundamental: number; // Hz
  readonly spread: number; // Hz, standard uncertainty of the fundamental
}

const DOUBT = { share: 0.5, least: 3e-4 } as const; // of the bend that is believed, and of the base

/** Where the series has its tone of a number. */
export const toneOf = ({ base, bend }: Pick<Series, 'base' | 'bend'>, number: number): number =>
  number * (base + bend * number ** 2);

/** The series before anything is fitted, from a base. */
export function believed(base: number, sharpening: Sharpening): Pick<Series, 'base' | 'bend'> {
  return { base, bend: sharpening / base };
}

/** The line y = F + (F·b)·n² through the tones, each divided by its number, and through what was believed of F·b. */
export function fitted(tones: readonly Tone[], sharpening: Sharpening, near: number): Series {
  const { bend: before } = believed(near, sharpening);
  const weightOfBelief = 1 / (DOUBT.share * before + DOUBT.least * near) ** 2;
  const rows = tones.map(({ frequency, spread, number }) => ({
    x: number ** 2,
    y: frequency / number,
    weight: (number / spread) ** 2,
  }));
  const sum = (of: (row: (typeof rows)[number]) => number) =>
    rows.reduce((total, row) => total + row.weight * of(row), 0);
  const [ones, x, xx] = [
    sum(() => 1),
    sum((row) => row.x),
    sum((row) => row.x ** 2) + weightOfBelief,
  ];
  const [y, xy] = [sum((row) => row.y), sum((row) => row.x * row.y) + weightOfBelief * before];
  const determinant = ones * xx - x * x;
  const [base, bend] = [(xx * y - x * xy) / determinant, (ones * xy - x * y) / determinant];
  const misses = sum((row) => (row.y - base - bend * row.x) ** 2);
  const scatter = Math.max(1, misses / Math.max(1, tones.length - 1));
  const spread = Math.sqrt((scatter * (xx - 2 * x + ones)) / determinant);
  return { base, bend, fundamental: base + bend, spread };
}
