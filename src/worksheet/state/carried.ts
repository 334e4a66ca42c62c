/**
 * What the band carries by each route, and the one bar that narrows: both together where they agree, else what was
 * measured, else what the screw predicts.
 * Units: Pa, N·m.
 * Source: definition.
 */
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

/** The routes that are there, the one that the bar shows last. */
export function carriedBy(sheet: Asked): readonly Carried[] {
  const [predicted, measured, both] = [
    sheet.result('predicted'),
    sheet.result('measured'),
    sheet.result('both'),
  ];
  const trials = sheet.answers().prediction?.trials;
  const byTrials = predicted?.ready ? { ...predicted, ...trials } : undefined;
  const least = Math.min(width(byTrials), width(measured?.ready ? measured : undefined));
  const found = [
    ['predicted', byTrials] as const,
    ['measured', measured?.ready ? measured : undefined] as const,
    ['both', both?.ready && width(both) < least ? both : undefined] as const,
  ];
  return found.flatMap(([route, span]) =>
    span ? [{ route, span: { ...span, low: Math.max(0, span.low) } }] : [],
  );
}
