/**
 * The worksheet's window of tension: every edge that can be told, which two bind, and where today's stress lies.
 * Units: SI only (Pa).
 * Source: definition.
 */
import {
  type HighCause,
  type LowCause,
  type TensionWindow,
  tensionWindow,
  type WindowEdge,
} from '../../tightness.ts';
import { makersEdges } from '../decide/limits.ts';
import { filledLimits } from '../decide/rails.ts';
import type { Worksheet } from '../inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';
import type { WorksheetPath } from '../path.ts';
import type { Chain } from '../predict/chain.ts';
import { lifeEdge, yieldEdge } from './highs.ts';
import { type EdgeStress, gripEdge, straightEdge } from './lows.ts';
import type { TodaysStress } from './today.ts';

/** The window, its edges, and what the edges that cannot be told yet wait for. */
export interface WindowResult extends TensionWindow {
  readonly lows: readonly WindowEdge<LowCause>[];
  readonly highs: readonly WindowEdge<HighCause>[];
  readonly today?: TodaysStress;
  readonly waitsFor: readonly WorksheetPath[];
}

type Told<Cause extends LowCause | HighCause> = readonly [Cause, Outcome<EdgeStress>];

const edgesOf = <Cause extends LowCause | HighCause>(told: readonly Told<Cause>[]) =>
  told.flatMap(([cause, edge]) => (edge.ready ? [{ cause, stress: edge.stress }] : []));

/**
 * The window; a single strip neither grips a wheel nor tires on it. It waits for a makers' limit that is filled with what it may not hold, or cannot be told as a stress, and
 * for the first edge.
 */
export function worksheetWindow(
  worksheet: Worksheet,
  chain: Chain,
  today: Outcome<TodaysStress>,
): Outcome<WindowResult> {
  const { section, strands } = chain;
  const limits = filledLimits(worksheet.target);
  const isForced = worksheet.target.makerLimitWheelForce !== undefined;
  const needs = isForced ? { limits, section, strands } : { limits, section };
  return whenReady<typeof needs, WindowResult>(needs, () => {
    const isOnWheels = worksheet.mill.strands !== 'one';
    const low: readonly Told<LowCause>[] = [
      ['straightness', straightEdge(worksheet, chain)],
      ...(isOnWheels ? [['grip', gripEdge(worksheet, chain)] as const] : []),
    ];
    const lows = edgesOf(low);
    const isWearing = isOnWheels && isServing(today, lows);
    const high: readonly Told<HighCause>[] = [
      ['yield', yieldEdge(worksheet, chain)],
      ...(isWearing ? [['life', lifeEdge(worksheet, chain, today)] as const] : []),
    ];
    const highs = [...makersEdges(worksheet, chain), ...edgesOf(high)];
    const missing = [...low, ...high].flatMap(([, edge]) => (edge.ready ? [] : edge.waitsFor));
    const waitsFor = [...new Set(missing)];
    if (lows.length + highs.length === 0) return { ready: false, waitsFor };
    const seen = today.ready ? { today: withoutFlag(today) } : {};
    return ready({ ...tensionWindow(lows, highs), lows, highs, waitsFor, ...seen });
  });
}

/** Whether today's setting holds and cuts straight: the life of one that does not is no measure. */
const isServing = (today: Outcome<TodaysStress>, lows: readonly WindowEdge<LowCause>[]): boolean =>
  !today.ready || lows.every(({ stress }) => today.stress >= stress);

const withoutFlag = ({ ready: _, ...today }: TodaysStress & { readonly ready: true }) => today;
