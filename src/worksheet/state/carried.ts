/**
 * What the band carries by each route at one torque, that in use where one is told, and the one bar that narrows: both
 * together where they agree, else what was measured, else what the screw predicts.
 * Units: Pa, N·m.
 * Source: definition.
 */
import { loadIn, type Outcome } from '../../core/worksheet.ts';
import type { SheetView } from './view.ts';

/** A stress with its 95 % interval, Pa. */
export interface Span {
  readonly low: number;
  readonly stress: number;
  readonly high: number;
}

/** A route to the stress. */
export type Route = 'predicted' | 'measured' | 'both';

/** What one route says. */
export interface Carried {
  readonly route: Route;
  readonly span: Span;
}

type Asked = Pick<SheetView, 'result' | 'answers'>;
type AskedAtHand = Asked & Pick<SheetView, 'worksheet'>;

/** The torque, N·m, that the band is tightened to now. */
export function torqueInUse({ worksheet }: Pick<SheetView, 'worksheet'>): number | undefined {
  const known = worksheet();
  return known && loadIn(known, known.use);
}

/** The highest torque of the readings, N·m, once they give a stress. */
export function topReading({ result }: Pick<SheetView, 'result'>): number | undefined {
  const measured = result('measured');
  return measured?.ready ? measured.topTorque : undefined;
}

/** Whether something tells the stress at the torque in use: the readings, or before these tell one the screw. */
function isToldAtUse({ result }: Asked): boolean {
  if (result('measured')?.ready) return result('atUse')?.ready === true;
  return result('predictedAtUse')?.ready === true && !result('both')?.ready;
}

/** The torque that all bars are about, N·m: that in use, or else the top of the readings. */
export function torqueAtHand(sheet: AskedAtHand): number | undefined {
  if (isToldAtUse(sheet)) return torqueInUse(sheet);
  const predicted = sheet.result('predicted');
  return topReading(sheet) ?? (predicted?.ready ? predicted.operands.torque : undefined);
}

const width = ({ low, high }: Span): number => high - low;

const known = <Value extends Span>(outcome: Outcome<Value> | undefined): Span | undefined =>
  outcome?.ready ? outcome : undefined;

/** The prediction, its ends by random trials once they are there. */
export function predictedSpan(sheet: Asked): Span | undefined {
  const predicted = sheet.result('predicted');
  return predicted?.ready ? { ...predicted, ...sheet.answers().prediction?.trials } : undefined;
}

const WIDE = 1.5; // times from one end to the other

/** Whether the two agree only with a prediction so wide that this tests little. */
export function testsLittle(sheet: Asked): boolean {
  const [agreement, predicted] = [sheet.result('agreement'), predictedSpan(sheet)];
  const doAgree = agreement?.ready === true && agreement.verdict === 'agree';
  return doAgree && predicted !== undefined && predicted.high > WIDE * predicted.low;
}

/** The same at the torque in use: where the chart's prediction passes. */
function predictedAtUse(sheet: Asked): Span | undefined {
  const predicted = sheet.result('predictedAtUse');
  if (!predicted?.ready) return undefined;
  const curve = sheet.answers().prediction?.curve ?? [];
  return curve.find(({ torque }) => torque === predicted.operands.torque) ?? predicted;
}

/** What each route says at the torque at hand. */
const spansOf = (sheet: Asked) =>
  isToldAtUse(sheet)
    ? ([
        ['predicted', predictedAtUse(sheet)],
        ['measured', known(sheet.result('atUse'))],
        ['both', known(sheet.result('bothAtUse'))],
      ] as const)
    : ([
        ['predicted', predictedSpan(sheet)],
        ['measured', known(sheet.result('measured'))],
        ['both', known(sheet.result('both'))],
      ] as const);

/** The routes that are there, the one that the bar shows last; both together only where that is the narrowest. */
export function carriedBy(sheet: Asked): readonly Carried[] {
  const found = spansOf(sheet).flatMap(([route, span]) =>
    span ? [{ route, span: { ...span, low: Math.max(0, span.low) } }] : [],
  );
  const least = Math.min(
    ...found.map(({ route, span }) => (route === 'both' ? Number.POSITIVE_INFINITY : width(span))),
  );
  return found.filter(({ route, span }) => route !== 'both' || width(span) < least);
}

/** A stress, and the torque, N·m, that it belongs to. */
export interface AtTorque extends Span {
  readonly torque: number;
}

/** The one stress that the sheet answers with: what the last bar shows. */
export function stressAnswered(sheet: AskedAtHand): AtTorque | undefined {
  const [best, torque] = [carriedBy(sheet).at(-1)?.span, torqueAtHand(sheet)];
  return best && torque !== undefined ? { ...best, torque } : undefined;
}
