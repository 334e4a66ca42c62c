/**
 * How many digits an uncertainty is shown with, and hence the value beside it.
 * Units: those of the number given. Source: the GUM (JCGM 100:2008), 7.2.6, which allows at most two digits and
 * rounding up; one digit, or two where the first is 1, is common practice, no source.
 */

const NOISE = 1e-6; // of the last digit: 0.30000000000000004 is not rounded up to 0.4
const MOST_DECIMALS = 12;

/** An uncertainty as it is shown, and the decimals that the value beside it shares. */
export interface ShownUncertainty {
  readonly uncertainty: number;
  readonly decimals: number;
}

/** `uncertainty` (above 0) rounded up to one significant digit, or to two where the first is 1. */
export function shownUncertainty(uncertainty: number): ShownUncertainty {
  const [mantissa = '', exponent = ''] = uncertainty.toExponential(9).split('e');
  const digits = mantissa.startsWith('1') ? 2 : 1;
  const decimals = Math.min(digits - 1 - Number(exponent), MOST_DECIMALS);
  const up = 10 ** Math.max(decimals, 0);
  const down = 10 ** Math.max(-decimals, 0);
  const lastDigits = Math.max(1, Math.ceil((uncertainty * up) / down - NOISE));
  return { uncertainty: (lastDigits * down) / up, decimals };
}
