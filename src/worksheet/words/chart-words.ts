/** The chart's finding in few words, with its number: at the torque in use, as the answers have it. */
import { carriedBy, type Route, torqueAtHand } from '../state/carried.ts';
import type { SheetView } from '../state/view.ts';
import { torqueSaid } from './answer-words.ts';

/** What the sheet must tell. */
type Asked = Pick<SheetView, 'answers' | 'result' | 'shown' | 'worksheet'>;

/** Whether what was measured agrees with what is predicted; nothing where nobody can say. */
function agreeing(sheet: Asked, theory: string): string {
  const agreement = sheet.result('agreement');
  if (!agreement?.ready || theory === '') return '';
  const joint = agreement.verdict === 'agree' ? 'which agrees' : 'which does not agree';
  return ` The ${sheet.shown().load.by} predicts ${theory}, ${joint}.`;
}

/** What the chart shows at this moment; undefined while there is nothing to draw. */
export function chartFinding(sheet: Asked): string | undefined {
  const [carried, torque, shown] = [carriedBy(sheet), torqueAtHand(sheet), sheet.shown()];
  const spanBy = (wanted: Route) => carried.find(({ route }) => route === wanted)?.span;
  const [measured, predicted] = [spanBy('measured'), spanBy('predicted')];
  const theory = predicted ? shown.range(predicted.low, predicted.high, 'stress') : '';
  if (measured && torque !== undefined) {
    const stress = shown.plusMinus(measured.stress, measured.high - measured.stress, 'stress');
    const at = torqueSaid(torque, sheet);
    return `By the dial the band carries ${stress} at ${at}.${agreeing(sheet, theory)}`;
  }
  if (predicted && torque !== undefined)
    return `The ${shown.load.by} should give ${theory} at ${torqueSaid(torque, sheet)}.`;
  return sheet.result('points')?.ready ? 'The readings so far.' : undefined;
}
