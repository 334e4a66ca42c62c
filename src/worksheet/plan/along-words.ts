/** What the sheet to take along says of the work at the band. */

import type { Shown } from '../state/shown.ts';
import type { Planned } from './inputs.ts';

/** How far apart to clamp; where that is only assumed, what to do with another bar. */
export function clampSentence(
  { plan: { gaugeLength }, barIsAssumed }: Pick<Planned, 'plan' | 'barIsAssumed'>,
  { quantity }: Shown,
): string {
  const apart = quantity(gaugeLength, 'length');
  return barIsAssumed
    ? `Clamp as far apart as your bar allows; this plan counts on ${apart}. Write the distance above.`
    : `Set the clamps ${apart} apart. If they are not, write the true distance above.`;
}

/** How the last column is filled. */
export const TURNS_COUNT = 'Count a whole turn each time its hand passes zero.';

/** What to do past a step, and how that differs from setting a band. */
export const pastStepSentence = ({ load: { name } }: Shown): string =>
  `If you go past a step, do not go back: write down the ${name} you reached and go on. To set a band: slacken well below, come up again.`;

/** What to do before the next series. */
export const BETWEEN_SERIES =
  'Between series: let the tension off, take hands off the bar until it is cool, and set the dial anew.';
