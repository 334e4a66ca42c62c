/** What a route says at the torque in use, before its result at another torque: with the interval of the bars. */
import { part } from '../kit/part.tsx';
import { carriedBy, type Route, torqueAtHand, torqueInUse } from '../state/carried.ts';
import { torqueSaid } from '../words/answer-words.ts';

const BY: Readonly<Record<Route, string>> = {
  predicted: 'Predicted',
  measured: 'Measured',
  both: 'Both together',
};

interface Props {
  readonly route: Route;
  readonly than: number | undefined; // N·m, what the result below is told at
}

/** Its name and interval; nothing where the result below says it, or the bars are not about the torque in use. */
export const AtUse = part<Props>(({ route, than }, sheet) => {
  const used = torqueInUse(sheet);
  if (used === undefined || used === than || used !== torqueAtHand(sheet)) return null;
  const said = carriedBy(sheet).find((carried) => carried.route === route)?.span;
  if (!said) return null;
  return (
    <div data-result={`${route}-at-use`}>
      <h3 class="result-name">
        {BY[route]} at {torqueSaid(used, sheet)}
      </h3>
      <p class="result-value steel">{sheet.shown().range(said.low, said.high, 'stress')}</p>
    </div>
  );
});
