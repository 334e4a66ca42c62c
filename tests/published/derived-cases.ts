/**
 * Cases worked out with 40 digits by other code from the same relations, and what ours makes of them.
 * Units: SI, angles in radians; those of the mills are in the unit that their name gives.
 */
import { numberAt, valueAt } from './cases.ts';
import derived from './data/derived.json' with { type: 'json' };

/** How near ours must come; null for a yes or no. */
export type DerivedTolerance = { readonly relative: number } | { readonly absolute: number } | null;

/** One case; `function` labels the relation. */
export interface DerivedCase {
  readonly name: string;
  readonly function: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: number | boolean;
  readonly tolerance: DerivedTolerance;
  readonly basis: string;
}

/** A loading series of one of the six invented mills. */
export interface MillSeries {
  readonly load: readonly number[]; // N·m, or Pa for the hydraulic one
  readonly load0: number;
  readonly dial: readonly number[]; // m
  readonly revs: readonly number[];
  readonly y: readonly number[]; // m
  readonly s0: number; // m
}

/** One of the six: its inputs are read by key. */
export interface DerivedMill {
  readonly inputs: unknown;
  readonly series: MillSeries;
}

const file = derived as unknown as {
  readonly cases: readonly DerivedCase[];
  readonly mills: Readonly<Record<string, DerivedMill>>;
};

/** Every case of the file. */
export const derivedCases = file.cases;

/** The six mills by letter. */
export const derivedMills = file.mills;

/** The number of a key; the file writes an infinite one as a word. */
export type Reader = (key: string) => number;

/** Our figure for one case. */
export type DerivedAnswer = (n: Reader, inputs: DerivedCase['inputs']) => number | boolean;

/** Our figures by the label of the relation. */
export type DerivedAnswers = Readonly<Record<string, DerivedAnswer>>;

/** Reads the numbers of a case or of a mill. */
export const readerOf =
  (inputs: unknown): Reader =>
  (key) =>
    valueAt(inputs, key) === 'Infinity' ? Number.POSITIVE_INFINITY : numberAt(inputs, key);

/** Whether ours is as near to what the case expects as the case asks. */
export function meets(ours: number | boolean, { expected, tolerance }: DerivedCase): boolean {
  if (typeof ours !== 'number' || typeof expected !== 'number' || tolerance === null)
    return ours === expected;
  const allowed =
    'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(expected);
  return Math.abs(ours - expected) <= allowed;
}
