/**
 * The guard rails round a stress that the worksheet would set: the makers' limits, the steel, the
 * wheel, the thread, common practice.
 * Units: SI only (Pa, N, m).
 * Source: definition; the limits are those of assumptions.ts and of setting-guards.ts.
 */

import { strandForce } from '../../section.ts';
import type { ZeroWarning } from '../../zero.ts';
import type { Worksheet } from '../inputs.ts';
import type { WantedInput } from '../known-inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome, StopCode } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { leastWheelShare } from '../own-assumptions.ts';
import type { WorksheetPath } from '../path.ts';
import { pullOf } from '../predict/pull.ts';
import type { ScrewResult } from '../predict/screw-model.ts';
import type { SectionResult, StrandsResult } from '../predict/section.ts';
import { peakStress, smallerWheel } from './peak-stress.ts';
import type { TargetStress } from './setting.ts';
import type { GuardCode, GuardLevel } from './setting-guards.ts';
import { guards } from './setting-guards.ts';
import type { SettingReach } from './setting-reach.ts';

/** Everything that the worksheet may want told. */
export type WorksheetGuardCode =
  | GuardCode
  | ZeroWarning
  | 'tooThickForWheel'
  | 'bendingNotJudged'
  | 'missedDialTurn'
  | 'oddRow'
  | 'rowsLeftOut'
  | 'rowsBelowDrag'
  | 'rowsWithoutTorque'
  | 'rowsStruck'
  | 'startsHigh'
  | 'fewerTurnsThanBand'
  | 'beyondReadings'
  | 'apart'
  | 'torqueFalls'
  | 'dialFalls'
  | 'readingsAboveAllowed'
  | 'useMayExceed'
  | 'wayAboveAllowed'
  | 'wayBeyondReadings'
  | 'dialDirectionTaken'
  | 'aboveWindow'
  | 'belowWindow';

/** One thing to tell, with the numbers it is about and the inputs it hangs on. */
export interface WorksheetGuard {
  readonly code: WorksheetGuardCode;
  readonly level: GuardLevel;
  readonly values: Readonly<Record<string, number>>;
  readonly inputs: readonly WorksheetPath[];
}

/** What the rails look at beside the stress; what is not ready is not judged. */
export interface RailContext {
  readonly section: Outcome<SectionResult>;
  readonly strands: Outcome<StrandsResult>;
  readonly screw: Outcome<ScrewResult>;
}

/** The rails touched, stops first. */
export interface RailsResult {
  readonly found: readonly WorksheetGuard[];
}

/** The stress that is wanted, with the input it comes from. */
export interface RailedTarget {
  readonly target: Outcome<TargetStress>;
  readonly input: WorksheetPath;
}

/** The rails of a target, with the uncertainty of the best of its settings, the first that is there. */
export function targetRails(
  worksheet: Worksheet,
  { target, input }: RailedTarget,
  context: RailContext,
  settings: readonly Outcome<SettingReach>[],
): Outcome<RailsResult> {
  const best = settings.find((setting) => setting.ready);
  const expandedUncertainty = best?.ready ? best.expandedUncertainty : 0;
  return whenReady({ target }, ({ target: { stress } }) =>
    worksheetRails(worksheet, { stress, expandedUncertainty, input }, context),
  );
}

/** A stress to be set and how far it may be off, with the input it comes from. */
export interface RailedStress {
  readonly stress: number; // Pa
  readonly expandedUncertainty: number; // Pa
  readonly input: WorksheetPath;
}

/**
 * The rails that a stress touches; waits for a limit that is filled with what it may not hold, and
 * for section and wheels where there is a limit of the wheel force to judge by.
 */
export function worksheetRails(
  worksheet: Worksheet,
  { stress, expandedUncertainty, input }: RailedStress,
  context: RailContext,
): Outcome<RailsResult> {
  const { target } = worksheet;
  const limits = filledLimits(target);
  const force = forceAtWheel(stress, context);
  const needs = target.makerLimitWheelForce === undefined ? { limits } : { limits, force };
  return whenReady(needs, () => {
    const peak = peakStress(worksheet, stress, context.section);
    const friction = context.screw.ready ? context.screw.operands : undefined;
    const found = guards({
      stress,
      expandedUncertainty,
      peakStress: peak,
      yieldStrength: target.yieldStrength,
      bandStressLimit: target.makerLimitStress,
      wheelForce: force.ready ? force.newtons : undefined,
      millForceLimit: target.makerLimitWheelForce,
      threadFriction: friction?.threadFrictionLow,
      selfLockingFriction: friction?.selfLockingFriction,
    });
    const named = found.map((guard) => ({
      ...guard,
      inputs: [input, ...(inputsOf[guard.code] ?? [])],
    }));
    const isWheelMissing =
      worksheet.mill.strands !== 'one' &&
      context.section.ready &&
      smallerWheel(worksheet) === undefined;
    const unjudged = isWheelMissing ? [bendingNotJudged] : [];
    return ready({ found: [...tooThick(worksheet, context.section), ...named, ...unjudged] });
  });
}

/** The setting, unless a rail stops it: then refused with the code of that rail. */
export function withinRails<Value extends object>(
  setting: Outcome<Value>,
  railsOutcome: Outcome<RailsResult>,
): Outcome<Value> {
  return whenReady({ setting, rails: railsOutcome }, ({ rails: { found } }) => {
    const stop = found.find(isStop);
    return stop ? refused(stop.code, stop.values, stop.inputs) : setting;
  });
}

const bendingNotJudged: WorksheetGuard = {
  code: 'bendingNotJudged',
  level: 'note',
  values: {},
  inputs: ['mill.wheelDiameter1'],
};

function isStop(guard: WorksheetGuard): guard is WorksheetGuard & { readonly code: StopCode } {
  return guard.level === 'stop';
}

const inputsOf: Partial<Record<GuardCode, readonly WorksheetPath[]>> = {
  aboveBandLimit: ['target.makerLimitStress'],
  aboveMillLimit: ['target.makerLimitWheelForce'],
  mayExceedBandLimit: ['target.makerLimitStress'],
  mayExceedMillLimit: ['target.makerLimitWheelForce'],
  nearYield: ['target.yieldStrength'],
  beyondYieldShare: ['target.yieldStrength'],
  mayBackOff: ['tensioner.friction.low'],
};

const limitNames = ['makerLimitStress', 'makerLimitWheelForce', 'yieldStrength'] as const;

/** The limits that are filled in; refused where one is filled with what it may not hold, for then nobody knows it. */
export function filledLimits(target: Worksheet['target']): Outcome<object> {
  const filled = limitNames.filter((name) => target[name] !== undefined);
  const wanted = filled.map((name): [string, WantedInput] => [
    name,
    [`target.${name}`, target[name]],
  ]);
  return knownInputs(Object.fromEntries(wanted));
}

function forceAtWheel(stress: number, context: RailContext): Outcome<{ readonly newtons: number }> {
  const { section, strands } = context;
  return whenReady({ section, strands }, ({ section: { area }, strands }) =>
    ready({ newtons: pullOf(strandForce(stress, area), strands) }),
  );
}

function tooThick(worksheet: Worksheet, section: Outcome<SectionResult>): WorksheetGuard[] {
  const wheelDiameter = smallerWheel(worksheet);
  if (!(section.ready && wheelDiameter !== undefined)) return [];
  const { thickness } = section.operands;
  if (thickness <= wheelDiameter / leastWheelShare) return [];
  const isFirst = worksheet.mill.wheelDiameter1 === wheelDiameter;
  const wheel = isFirst ? 'mill.wheelDiameter1' : 'mill.wheelDiameter2';
  const values = { thickness, wheelDiameter };
  return [{ code: 'tooThickForWheel', level: 'stop', values, inputs: ['band.thickness', wheel] }];
}
