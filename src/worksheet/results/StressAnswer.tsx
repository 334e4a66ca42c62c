/** The one bar that narrows: what the band carries by each route on one scale, what is assumed, and what narrows it next. */
import { part } from '../kit/part.tsx';
import { type Carried, carriedBy, torqueAtHand, torqueInUse } from '../state/carried.ts';
import type { SheetView } from '../state/view.ts';
import { torqueSaid } from '../words/answer-words.ts';
import { Narrowing } from './Narrowing.tsx';
import { routeWords, StressBars } from './StressBars.tsx';

/** Whether the bars are about the torque in use: beside those of another the target would say “loosen”, or “tighten”, wrongly. */
const isOfUse = (sheet: SheetView): boolean => {
  const used = torqueInUse(sheet);
  return used === undefined || used === torqueAtHand(sheet);
};

/** The bars, the one that counts last and full. */
const Bars = part<{ readonly carried: readonly Carried[] }>(({ carried }, sheet) => {
  const isRough = sheet.result('verdict')?.grade === 'rough';
  const bars = carried.map(({ route, span }, at) => ({
    says: `${routeWords(route, sheet.shown())}${route === 'measured' && isRough ? ', roughly,' : ''}`,
    span,
    isFaint: at < carried.length - 1 || route === 'predicted',
  }));
  return (
    <StressBars
      bars={bars}
      target={isOfUse(sheet) ? sheet.worksheet()?.target.stress : undefined}
    />
  );
});

/** The bar with all that belongs to it. */
export const StressAnswer = part((_, sheet) => {
  const [carried, torque] = [carriedBy(sheet), torqueAtHand(sheet)];
  if (torque === undefined) return null;
  return (
    <div class="stress-answer">
      <p class="bar-at">At {torqueSaid(torque, sheet)}, 95 % sure:</p>
      <Bars carried={carried} />
      <Narrowing />
    </div>
  );
});
