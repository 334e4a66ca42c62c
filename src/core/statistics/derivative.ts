/**
 * The slope of a function of one number, found from values beside the point.
 * Units: those of the function over those of its argument.
 * Source: C. J. F. Ridders, Advances in Engineering Software 4 (1982) 75, from memory: central
 * differences over ever smaller steps, extrapolated to none; the most settled entry is taken.
 */

const SHRINK = 2;
const ROWS = 8;

/** Derivative of f at x; `step` is the first and widest step to either side, > 0. */
export function derivative(f: (x: number) => number, x: number, step: number): number {
  let best = Number.NaN;
  let doubt = Number.POSITIVE_INFINITY;
  let previous: number[] = [];
  for (let row = 0; row < ROWS; row += 1) {
    const width = step / SHRINK ** row;
    const [right, left] = [x + width, x - width];
    const current = [(f(right) - f(left)) / (right - left)];
    for (let order = 1; order <= row; order += 1) {
      const [coarse, fine] = [previous[order - 1] as number, current[order - 1] as number];
      const better = fine + (fine - coarse) / (SHRINK ** (2 * order) - 1);
      const change = Math.max(Math.abs(better - fine), Math.abs(better - coarse));
      if (change < doubt) [best, doubt] = [better, change];
      current.push(better);
    }
    previous = current;
  }
  return best;
}
