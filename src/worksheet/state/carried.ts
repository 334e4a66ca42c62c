/**
 * What the band carries by each route, and the one bar that narrows: both together where they agree, else what was
 * measured, else what the screw predicts.
 * Units: Pa, N·m.
 * Source: definition.
 */
import { loadIn } from '../../core/worksheet.ts';
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

/** The torque that all routes are about, N·m: the top of the readings, or that in use. */
export function torqueAtHand(sheet: Asked): number | undefined {
  const [predicted, measured] = [sheet.result('predicted'), sheet.result('measured')];
  if (measured?.ready) return measured.topTorque;
  return predicted?.ready ? predicted.operands.torque : undefined;
}

/** How wide an interval is; one that is not there says nothing, so it has no end. */
const width = (span: Span | undefined): number =>
  span ? span.high - span.low : Number.POSITIVE_INFINITY;

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

/** The routes that are there, the one that the bar shows last. */
export function carriedBy(sheet: Asked): readonly Carried[] {
  const [predicted, measured, both] = [
    predictedSpan(sheet),
    sheet.result('measured'),
    sheet.result('both'),
  ];
  const least = Math.min(width(predicted), width(measured?.ready ? measured : undefined));
  const found = [
    ['predicted', predicted] as const,
    ['measured', measured?.ready ? measured : undefined] as const,
    ['both', both?.ready && width(both) < least ? both : undefined] as const,
  ];
  return found.flatMap(([route, span]) =>
    span ? [{ route, span: { ...span, low: Math.max(0, span.low) } }] : [],
  );
}

/** A stress, and the torque, N·m, that it belongs to. */
export interface AtTorque extends Span {
  readonly torque: number;
}

/** The torque, N·m, that the band is tightened to now. */
export function torqueInUse({ worksheet }: Pick<SheetView, 'worksheet'>): number | undefined {
  const known = worksheet();
  return known && loadIn(known, known.use);
}

/** The one stress that the sheet answers with: by the readings at the torque in use, else what the last bar shows. */
export function stressAnswered(sheet: Asked & Pick<SheetView, 'worksheet'>): AtTorque | undefined {
  const [used, atUse, torque] = [torqueInUse(sheet), sheet.result('atUse'), torqueAtHand(sheet)];
  if (atUse?.ready && used !== undefined && used !== torque) return { ...atUse, torque: used };
  const best = carriedBy(sheet).at(-1)?.span;
  return best && torque !== undefined ? { ...best, torque } : undefined;
}
