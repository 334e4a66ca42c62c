/** What a route says at the torque in use, under its result at another torque: with the interval of the bars. */
import { part } from '../kit/part.tsx';
import { Steel } from '../kit/Result.tsx';
import { carriedBy, type Route, torqueAtHand, torqueInUse } from '../state/carried.ts';
import { torqueSaid } from '../words/answer-words.ts';

interface Props {
  readonly route: Route;
  readonly than: number | undefined; // N·m, what the result above is told at
}

/** The sentence; nothing where the result above says it, or the bars are not about the torque in use. */
export const AtUse = part<Props>(({ route, than }, sheet) => {
  const used = torqueInUse(sheet);
  if (used === undefined || used === than || used !== torqueAtHand(sheet)) return null;
  const said = carriedBy(sheet).find((carried) => carried.route === route)?.span;
  if (!said) return null;
  return (
    <p class="result-note" data-result={`${route}-at-use`}>
      At {torqueSaid(used, sheet)}:{' '}
      <Steel>{sheet.shown().range(said.low, said.high, 'stress')}</Steel>.
    </p>
  );
});
