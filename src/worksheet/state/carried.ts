/**
 * What the band carries by each route, as the one bar that narrows shows it: the screw's prediction, the measurement.
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
export type Route = 'predicted' | 'measured';

/** What each route says that is there yet, the one that is trusted most last. */
export type Carried = readonly (readonly [route: Route, span: Span, torque: number])[];

/** The routes of a sheet. */
export function carriedBy(sheet: Pick<SheetView, 'result' | 'answers'>): Carried {
  const [predicted, measured] = [sheet.result('predicted'), sheet.result('measured')];
  const trials = sheet.answers().prediction?.trials;
  const routes: Carried[number][] = [];
  if (predicted?.ready) {
    const { stress, low, high } = { ...predicted, ...trials };
    routes.push(['predicted', { low: Math.max(0, low), stress, high }, predicted.operands.torque]);
  }
  if (measured?.ready) {
    const { stress, low, high, topTorque } = measured;
    routes.push(['measured', { low, stress, high }, topTorque]);
  }
  return routes;
}
