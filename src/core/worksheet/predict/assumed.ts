/**
 * What stands for boxes of the worksheet that are empty: each a range, how much of the prediction's doubt it makes,
 * and what filling it in would bring.
 * Units: those of the inputs; shares have no unit.
 * Source: definition; how well such a box is usually known, assumptions.ts; first order, JCGM 100:2008 (GUM) 5.1, from memory.
 */
import { coverage, screwSpreads, threadFrictionHalfWidth } from '../../assumptions.ts';
import { sum } from '../../summary.ts';
import type { WorksheetCollar } from '../inputs.ts';
import type { Outcome } from '../outcome.ts';
import type { WorksheetPath } from '../path.ts';
import type { CollarRange } from './collar.ts';
import type { LossRange } from './losses.ts';
import type { PredictedResult } from './prediction.ts';
import type { Theory } from './theory.ts';

/** An input of the prediction that may be assumed. */
export type AssumedName =
  | 'threadFriction'
  | 'collarFriction'
  | 'collarKind' // a ball bearing (0) or a washer (1)
  | 'collarDiameter'
  | 'dragTorque'
  | 'sealFriction'
  | 'pressure' // as the gauge has it
  | 'thickness';

/** A range that stands for an empty box, and how well the box is known once it is filled. */
export interface Assumption {
  readonly name: AssumedName;
  readonly path: WorksheetPath; // the box, or the choice that is open
  readonly low: number;
  readonly high: number;
  readonly onceKnown: number; // standard uncertainty
}

/** A range that stands for an empty box, with its share of the prediction's variance. */
export interface AssumedInput extends Omit<Assumption, 'onceKnown'> {
  readonly varianceShare: number;
}

/** A box that is worth filling in, and the half-width that the prediction would then have, as a share of its stress. */
export interface NextBox {
  readonly path: WorksheetPath;
  readonly halfWidthShare: number;
  readonly gain: number; // what the half-width loses, as a share of the stress
}

/** What is assumed, and what to fill in next: that which brings the most comes first. */
export interface AssumedResult {
  readonly assumed: readonly AssumedInput[];
  readonly nextBoxes: readonly NextBox[];
}

/** The thread's friction, where a range from the handbook stands for it. */
export function frictionAssumptions({ low, high, isAssumed }: LossRange): readonly Assumption[] {
  const onceKnown = threadFrictionHalfWidth / Math.sqrt(3);
  const path = 'tensioner.friction.kind';
  return isAssumed ? [{ name: 'threadFriction', path, low, high, onceKnown }] : [];
}

/** Friction and diameter of the collar, where the thread's washer stands for them. */
export function collarAssumptions(
  { kind }: WorksheetCollar,
  collar: CollarRange,
): readonly Assumption[] {
  const isOpen = kind === 'unknown';
  const { collarFriction, frictionHalfWidth, collarDiameter, diameterHalfWidth } = collar;
  const friction: Assumption = {
    name: 'collarFriction',
    path: isOpen ? 'tensioner.collar.kind' : 'tensioner.collar.frictionLow',
    low: collarFriction - frictionHalfWidth,
    high: collarFriction + frictionHalfWidth,
    onceKnown: (screwSpreads.collarFriction * collarFriction) / Math.sqrt(3),
  };
  const diameter: Assumption = {
    name: 'collarDiameter',
    path: isOpen ? 'tensioner.collar.kind' : 'tensioner.collar.outerDiameter',
    low: collarDiameter - diameterHalfWidth,
    high: collarDiameter + diameterHalfWidth,
    onceKnown: 0,
  };
  const path = 'tensioner.collar.kind';
  const lies: Assumption = { name: 'collarKind', path, low: 0, high: 1, onceKnown: 0 };
  return [
    ...(collar.mayBeBearing ? [lies] : []),
    ...(collar.isAssumed ? [friction] : []),
    ...(diameterHalfWidth > 0 ? [diameter] : []),
  ];
}

const RECTANGULAR = Math.sqrt(3); // half-width over standard uncertainty

/** What the prediction assumes, and what each box would bring; nothing while there is no prediction. */
export function worksheetAssumed(
  theory: Outcome<Theory>,
  predicted: Outcome<PredictedResult>,
): AssumedResult {
  if (!theory.ready || !predicted.ready) return { assumed: [], nextBoxes: [] };
  const { stress, standardUncertainty, contributions } = predicted;
  const whole = standardUncertainty ** 2;
  const terms = theory.assumed.map(({ onceKnown, ...range }) => {
    const now = contributions.find(({ name }) => name === range.name)?.contribution ?? 0;
    const then = (now * onceKnown * 2 * RECTANGULAR) / (range.high - range.low);
    return { range, variance: now ** 2, saved: Math.max(0, now ** 2 - then ** 2) };
  });
  const nextBoxes = [...new Set(terms.map(({ range }) => range.path))].map((path) => {
    const saved = sum(terms.flatMap((term) => (term.range.path === path ? [term.saved] : [])));
    const left = Math.sqrt(Math.max(0, whole - saved));
    const halfWidthShare = (coverage.factor * left) / stress;
    const gain = (coverage.factor * standardUncertainty) / stress - halfWidthShare;
    return { path, halfWidthShare, gain };
  });
  return {
    assumed: terms.map(({ range, variance }) => ({ ...range, varianceShare: variance / whole })),
    nextBoxes: nextBoxes.sort((a, b) => b.gain - a.gain),
  };
}
