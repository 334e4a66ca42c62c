/**
 * Guard rails round a setting: what to say, and what to refuse, before anyone turns the handle.
 * Units: SI only (Pa, N, m).
 * Source: derived here; the limits are those of assumptions.ts, or the user's own.
 */
import { assertAtLeast, assertFinite, assertPositive } from '../../assert.ts';
import { bandSteel, discWorkingShare, leastMargins, yieldShares } from '../../assumptions.ts';
import { commonStress, wideUncertainty as wideShare } from '../own-assumptions.ts';

/** `stop`: no setting is given. `warn`: given with a caution. `note`: said in passing. */
export type GuardLevel = 'note' | 'warn' | 'stop';

/** Which rail was touched. */
export type GuardCode =
  | 'aboveBandLimit'
  | 'aboveMillLimit'
  | 'mayExceedBandLimit'
  | 'mayExceedMillLimit'
  | 'aboveBearingLimit'
  | 'nearYield'
  | 'beyondYieldShare'
  | 'nearSlip'
  | 'outsideCommonPractice'
  | 'discSpringTooFlat'
  | 'mayBackOff'
  | 'wideUncertainty';

/** One thing to tell, with the numbers that it is about, in SI. */
export interface Guard {
  readonly code: GuardCode;
  readonly level: GuardLevel;
  readonly values: Readonly<Record<string, number>>;
}

/** What is known of the setting; whatever is left out is not judged. */
export interface GuardedSetting {
  readonly stress: number; // Pa, of the setting, at rest
  readonly expandedUncertainty?: number | undefined; // Pa, U of that stress
  readonly peakStress?: number | undefined; // Pa, with bending and power
  readonly yieldStrength?: number | undefined; // Pa, that of band steel unless given
  readonly bandStressLimit?: number | undefined; // Pa, of the band's maker
  readonly wheelForce?: number | undefined; // N
  readonly rimPull?: number | undefined; // N, of the cut, P/v; 0 unless given
  readonly millForceLimit?: number | undefined; // N, of the mill's maker
  readonly bearingForceLimit?: number | undefined; // N
  readonly slipMargin?: number | undefined; // no unit
  readonly discDeflection?: number | undefined; // m, of one disc
  readonly discConeHeight?: number | undefined; // m, free cone height h₀
  readonly threadFriction?: number | undefined; // no unit
  readonly selfLockingFriction?: number | undefined; // least that locks the thread alone
}

type Rail = (setting: GuardedSetting) => readonly Guard[];

/** The two named numbers when both are known. */
function pair(a: number | undefined, b: number | undefined): readonly [number, number] | undefined {
  return a === undefined || b === undefined ? undefined : [a, b];
}

const bandLimit: Rail = ({ stress, expandedUncertainty = 0, bandStressLimit: limit }) => {
  if (limit === undefined) return [];
  if (stress > limit) return [{ code: 'aboveBandLimit', level: 'stop', values: { stress, limit } }];
  const highest = stress + expandedUncertainty;
  return highest > limit
    ? [{ code: 'mayExceedBandLimit', level: 'warn', values: { highest, limit } }]
    : [];
};

/** The force is as uncertain, for its size, as the stress. */
const millLimit: Rail = ({ stress, expandedUncertainty = 0, wheelForce, millForceLimit }) => {
  const known = pair(wheelForce, millForceLimit);
  if (!known) return [];
  const [force, limit] = known;
  if (force > limit) return [{ code: 'aboveMillLimit', level: 'stop', values: { force, limit } }];
  const highest = force * (1 + expandedUncertainty / stress);
  return highest > limit
    ? [{ code: 'mayExceedMillLimit', level: 'warn', values: { highest, limit } }]
    : [];
};

/**
 * A rolling bearing's life goes as load⁻³: `lifeRatio` is life at this load over life at the limit.
 */
const bearingLimit: Rail = ({ wheelForce, rimPull = 0, bearingForceLimit }) => {
  const known = pair(wheelForce, bearingForceLimit);
  if (!known || known[0] + rimPull <= known[1]) return [];
  const [force, limit] = [known[0] + rimPull, known[1]];
  const values = { force, limit, lifeRatio: (force / limit) ** -3 };
  return [{ code: 'aboveBearingLimit', level: 'stop', values }];
};

const yieldShare: Rail = (setting) => {
  if (setting.peakStress === undefined) return [];
  const { expandedUncertainty = 0, yieldStrength = bandSteel.yieldStrength } = setting;
  const highest = setting.peakStress + expandedUncertainty;
  const share = highest / yieldStrength;
  const values = { highest, yieldStrength, share };
  if (share > yieldShares.stop) return [{ code: 'beyondYieldShare', level: 'stop', values }];
  return share > yieldShares.shortLife ? [{ code: 'nearYield', level: 'warn', values }] : [];
};

const slip: Rail = ({ slipMargin }) =>
  slipMargin !== undefined && slipMargin < leastMargins.slip
    ? [{ code: 'nearSlip', level: 'warn', values: { slipMargin } }]
    : [];

const commonPractice: Rail = ({ stress }) =>
  stress < commonStress.low || stress > commonStress.high
    ? [{ code: 'outsideCommonPractice', level: 'note', values: { stress, ...commonStress } }]
    : [];

const discSpring: Rail = ({ discDeflection, discConeHeight }) => {
  const known = pair(discDeflection, discConeHeight);
  if (!known || known[0] <= discWorkingShare * known[1]) return [];
  const values = { deflection: known[0], limit: discWorkingShare * known[1] };
  return [{ code: 'discSpringTooFlat', level: 'stop', values }];
};

/** Below what locks the thread a screw can back off too, so the rail has no lower end. */
const backingOff: Rail = ({ threadFriction, selfLockingFriction }) => {
  const known = pair(threadFriction, selfLockingFriction);
  if (!known || known[0] >= leastMargins.selfLocking * known[1]) return [];
  const values = { threadFriction: known[0], selfLockingFriction: known[1] };
  return [{ code: 'mayBackOff', level: 'warn', values }];
};

const wideUncertainty: Rail = ({ stress, expandedUncertainty = 0 }) => {
  const share = expandedUncertainty / stress;
  return share > wideShare ? [{ code: 'wideUncertainty', level: 'note', values: { share } }] : [];
};

const rails: readonly Rail[] = [
  bandLimit,
  millLimit,
  bearingLimit,
  yieldShare,
  discSpring,
  slip,
  backingOff,
  commonPractice,
  wideUncertainty,
];

/**
 * All rails that a setting touches, stops first; empty where nothing needs saying.
 * @throws RangeError unless stress > 0 Pa, limits above 0, and what is given is finite
 */
export function guards(setting: GuardedSetting): readonly Guard[] {
  checkSetting(setting);
  const order: Readonly<Record<GuardLevel, number>> = { stop: 0, warn: 1, note: 2 };
  const found = rails.flatMap((rail) => rail(setting));
  return found.sort((a, b) => order[a.level] - order[b.level]);
}

/** Units of what may be given: these must be above 0 … */
const positiveUnits = {
  stress: 'Pa',
  peakStress: 'Pa',
  yieldStrength: 'Pa',
  bandStressLimit: 'Pa',
  millForceLimit: 'N',
  bearingForceLimit: 'N',
  discConeHeight: 'm',
} as const;

/** … and these at least 0. */
const plainUnits = {
  expandedUncertainty: 'Pa',
  wheelForce: 'N',
  rimPull: 'N',
  discDeflection: 'm',
  threadFriction: '',
  selfLockingFriction: '',
} as const;

function checkSetting(setting: GuardedSetting): void {
  for (const [name, unit] of Object.entries(positiveUnits)) {
    const value = setting[name as keyof typeof positiveUnits];
    if (value !== undefined) assertPositive(name, value, unit);
  }
  for (const [name, unit] of Object.entries(plainUnits)) {
    const value = setting[name as keyof typeof plainUnits];
    if (value !== undefined) assertAtLeast(name, value, 0, unit);
  }
  // Negative where the slack strand lifts off.
  if (setting.slipMargin !== undefined) assertFinite('slipMargin', setting.slipMargin);
}
