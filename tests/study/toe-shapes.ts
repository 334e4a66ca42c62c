/**
 * Ways in which straightening may die with load, for the study of coverage: share left at load x.
 * Units: none; x is the share of the top load, 0 to 1.
 * Source: assumptions of the study.
 */

/** One way. */
export interface ToeShape {
  readonly name: string;
  readonly deadAt: number; // share of the top load at which 5 % is left
  readonly left: (load: number) => number; // 1 at no load
}

/** Share left, where u = 1 means 5 % left. */
const forms: Readonly<Record<string, (u: number) => number>> = {
  exponential: (u) => 0.05 ** u,
  bell: (u) => 0.05 ** (u * u),
  hinge: (u) => Math.max(0, 1 - 0.95 * u),
  coilSet: (u) => 1 / Math.cosh(Math.acosh(20) * Math.sqrt(u)),
  sag: (u) => (1 + (Math.sqrt(20) - 1) * u) ** -2,
};

/** All shapes, dead but for 5 % at each of the loads. */
export function toeShapes(deadAt: readonly number[]): readonly ToeShape[] {
  return Object.entries(forms).flatMap(([name, form]) =>
    deadAt.map((end) => ({ name, deadAt: end, left: (load: number) => form(load / end) })),
  );
}
