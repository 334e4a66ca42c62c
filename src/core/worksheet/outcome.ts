/**
 * A result that may have to wait: ready with its numbers, or waiting for named inputs, with the
 * reason where an input is known but cannot be used. A bad input so stops only what depends on it.
 * Nothing is caught here: what the core throws beyond the inputs' own limits is a fault of ours.
 * Units: those of the result.
 * Source: definition.
 */
import type { WorksheetPath } from './path.ts';

/** Rails at which no setting is given. */
export type StopCode =
  | 'aboveBandLimit'
  | 'aboveMillLimit'
  | 'beyondYieldShare'
  | 'tooThickForWheel';

/** Everything that a result can be refused for. */
export type RefusalCode =
  | StopCode
  | 'outOfRange'
  | 'beyondNumbers'
  | 'bodyWiderThanBand'
  | 'wheelsOverlap'
  | 'threadUnknown'
  | 'pitchTooCoarse'
  | 'leadTooSteep'
  | 'rangeBackwards'
  | 'efficiencyAboveOne'
  | 'frictionJams'
  | 'collarInsideOut'
  | 'tooFewReadings'
  | 'readingFalls'
  | 'zeroTooVague'
  | 'tooMuchStretch'
  | 'tooFewStraight'
  | 'noLine'
  | 'turnsFall'
  | 'belowDrag'
  | 'belowZero'
  | 'ownEfficiencyAboveOne'
  | 'theyDisagree'
  | 'tunedFromReadings'
  | 'rodTooThick'
  | 'sealTakesAll'
  | 'noteOutOfReach'
  | 'pressTooSoft'
  | 'looseningNotLess'
  | 'pressureNotLess';

/** Why a result cannot be given, by code and numbers. */
export interface Refusal {
  readonly code: RefusalCode;
  readonly values: Readonly<Record<string, number>>;
}

/** A result that is not there yet, with the inputs that could bring it. */
export interface Waiting {
  readonly ready: false;
  readonly waitsFor: readonly WorksheetPath[];
  readonly refusal?: Refusal;
}

/** A result that is there, with its numbers beside the flag. */
export type Ready<Value> = { readonly ready: true } & Value;

/** Either. */
export type Outcome<Value> = Ready<Value> | Waiting;

/** The values of several outcomes, once all are ready, without their flags. */
export type ReadyValues<Needs> = {
  readonly [Name in keyof Needs]: Omit<Extract<Needs[Name], { ready: true }>, 'ready'>;
};

/** The outcome that is there: the value with its flag. */
export function ready<Value extends object>(value: Value): Ready<Value> {
  return { ready: true, ...value };
}

/** The outcome that cannot be given although its inputs are known; `waitsFor` could mend it. */
export function refused(
  code: RefusalCode,
  values: Refusal['values'],
  waitsFor: readonly WorksheetPath[],
): Waiting {
  return { ready: false, waitsFor, refusal: { code, values } };
}

/** The outcome derived from others: it waits for whatever they wait for, with the first of their refusals. */
export function whenReady<Needs extends Readonly<Record<string, Outcome<object>>>, Value>(
  needs: Needs,
  derive: (values: ReadyValues<Needs>) => Outcome<Value>,
): Outcome<Value> {
  const waiting = Object.values(needs).filter((need) => !need.ready);
  if (waiting.length > 0) return merged(waiting);
  return derive(withoutFlags(needs));
}

function withoutFlags<Needs extends Readonly<Record<string, Outcome<object>>>>(needs: Needs) {
  const values = Object.entries(needs).map(([name, { ready: _, ...value }]) => [name, value]);
  return Object.fromEntries(values) as ReadyValues<Needs>;
}

function merged(waiting: readonly Waiting[]): Waiting {
  const waitsFor = [...new Set(waiting.flatMap((need) => need.waitsFor))];
  const refusal = waiting.find((need) => need.refusal)?.refusal;
  return { ready: false, waitsFor, ...(refusal && { refusal }) };
}
