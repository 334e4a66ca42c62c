/**
 * Exact conversion factors to SI, kept as a numerator and a denominator so that `1.1 mm` becomes 0.0011 m and not
 * 0.0011000000000000001 m.
 * Units: each factor is SI units per unit named.
 * Source: NIST Special Publication 811 (2008), section B.6 and appendix B.8, and NIST Handbook 44, appendix C, which fix
 * the inch (0.0254 m), the pound (0.453 592 37 kg) and standard gravity (9.806 65 m/s²) exactly; the rest is derived here.
 */

/** A conversion factor as an exact fraction: SI value = number × numerator / denominator. */
export type Factor = readonly [numerator: number, denominator: number];

/** Product of two factors, such as force × length. */
export const times = ([a, b]: Factor, [c, d]: Factor): Factor => [a * c, b * d];

/** Quotient of two factors, such as force / area. */
export const over = ([a, b]: Factor, [c, d]: Factor): Factor => [a * d, b * c];

/** A factor for a unit a thousandth as large. */
export const milli = ([a, b]: Factor): Factor => [a, b * 1e3];

/** A factor for a unit a thousand times as large. */
export const kilo = ([a, b]: Factor): Factor => [a * 1e3, b];

/** A unit that is already SI. */
export const si: Factor = [1, 1];

/** Inch, 0.0254 m exactly. */
export const inch: Factor = [254, 1e4];

/** Foot, 12 inches, 0.3048 m exactly. */
export const foot: Factor = [3048, 1e4];

/** Mile, 5280 feet, 1609.344 m exactly. */
export const mile: Factor = [1609344, 1e3];

/** Pound (avoirdupois), 0.453 592 37 kg exactly. */
export const pound: Factor = [45359237, 1e8];

/** Standard gravity, 9.806 65 m/s² exactly. */
export const standardGravity: Factor = [980665, 1e5];

/** Pound-force, 4.448 221 615 260 5 N exactly. */
export const poundForce: Factor = times(pound, standardGravity);

/** Kilogram-force, 9.806 65 N exactly. */
export const kilogramForce: Factor = standardGravity;

/** Pound-force per square inch, about 6894.757 Pa. */
export const psi: Factor = over(poundForce, times(inch, inch));

/** Foot pound-force, about 1.355 818 N·m or J. */
export const footPoundForce: Factor = times(poundForce, foot);

/** Mechanical horsepower, 550 foot pounds-force per second, about 745.6999 W. */
export const horsepower: Factor = times([550, 1], footPoundForce);

/** Degree of angle, π/180 rad. */
export const degree: Factor = [Math.PI, 180];

/** Degree Fahrenheit as a temperature difference, 1/1.8 K exactly. */
export const degreeFahrenheit: Factor = [10, 18];

/** SI value of a number of units. */
export const siValue = (amount: number, [numerator, denominator]: Factor): number =>
  (amount * numerator) / denominator;

/** Number of units in an SI value. */
export const amountOf = (value: number, [numerator, denominator]: Factor): number =>
  (value * denominator) / numerator;
