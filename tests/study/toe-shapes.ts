/**
 * Ways in which straightening may die with load, for the study of coverage: share left at load x.
 * Units: none; x is the share of the top load, 0 to 1.
 * Source: assumptions of the study. Each shape has a short and a long form; at half of the top load
 * no more than 5 % is left.
 */

/** One way, with its length. */
export interface ToeShape {
  readonly name: string;
  readonly length: number;
  readonly left: (load: number) => number; // 1 at no load
}

const forms: readonly [string, readonly [number, number], (x: number, l: number) => number][] = [
  ['exponential', [0.05, 0.12], (x, l) => Math.exp(-x / l)],
  ['bell', [0.08, 0.2], (x, l) => Math.exp(-0.5 * (x / l) ** 2)],
  ['hinge', [0.12, 0.3], (x, l) => Math.max(0, 1 - x / l)],
  ['coil set', [0.01, 0.03], (x, l) => 1 / Math.cosh(Math.sqrt(x / l))],
  ['sag', [0.04, 0.1], (x, l) => (1 + x / l) ** -2],
];

/** All shapes in both lengths. */
export const toeShapes: readonly ToeShape[] = forms.flatMap(([name, lengths, left]) =>
  lengths.map((length) => ({ name, length, left: (load: number) => left(load, length) })),
);
