/**
 * Ways in which straightening may die with load, for the study of coverage: share left at load x.
 * Units: none; x is the share of the top load, 0 to 1.
 * Source: assumptions of the study. Each shape comes twice: dead, but for 5 %, at a tenth and at
 * three tenths of the top load.
 */

/** One way. */
export interface ToeShape {
  readonly name: string;
  readonly deadAt: number; // share of the top load at which 5 % is left
  readonly left: (load: number) => number; // 1 at no load
}

const DEAD = [0.1, 0.3] as const;

/** Share left, where u = 1 means 5 % left. */
const forms: Readonly<Record<string, (u: number) => number>> = {
  exponential: (u) => 0.05 ** u,
  bell: (u) => 0.05 ** (u * u),
  hinge: (u) => Math.max(0, 1 - 0.95 * u),
  coilSet: (u) => 1 / Math.cosh(Math.acosh(20) * Math.sqrt(u)),
  sag: (u) => (1 + (Math.sqrt(20) - 1) * u) ** -2,
};

/** All shapes, short and long. */
export const toeShapes: readonly ToeShape[] = Object.entries(forms).flatMap(([name, form]) =>
  DEAD.map((deadAt) => ({ name, deadAt, left: (load: number) => form(load / deadAt) })),
);
