/**
 * The guard rails round a stress that the worksheet would set: the makers' limits, the steel, the
 * thread, common practice.
 * Units: SI only (Pa, N, m).
 * Source: bending of a narrow strip with its edge factor 1.05, derived in wheel.ts and wide-strip.ts;
 * the limits themselves are those of guards.ts.
 */
import type { Guard } from './guards.ts';
import { guards } from './guards.ts';
import { strandForce, wheelForce } from './section.ts';
import { bendingStress } from './wheel.ts';
import { boxes, isUsable } from './worksheet-boxes.ts';
import type { Worksheet } from './worksheet-form.ts';
import type { Outcome } from './worksheet-outcome.ts';
import { ready, refused, whenReady } from './worksheet-outcome.ts';
import type { ScrewResult } from './worksheet-screw.ts';
import type { SectionResult, StrandsResult } from './worksheet-section.ts';

/** A stress to be set, with what else is known; what is not ready is not judged. */
export interface RailedStress {
  readonly stress: number; // Pa
  readonly expandedUncertainty: number; // Pa
  readonly section: Outcome<SectionResult>;
  readonly strands: Outcome<StrandsResult>;
  readonly screw: Outcome<ScrewResult>;
}

/** The rails touched, stops first. */
export interface RailsResult {
  readonly found: readonly Guard[];
}

const edgeFactor = 1.05; // bending at the gullets against that of a narrow strip

/** The rails that a stress touches; waits for a limit that is filled with what it may not hold. */
export function worksheetRails(
  worksheet: Worksheet,
  setting: RailedStress,
): Outcome<RailsResult> {
  const { target } = worksheet;
  const { stress, expandedUncertainty, section, strands, screw } = setting;
  const limits = filledLimits(target);
  return whenReady({ limits }, () => {
    const force = section.ready && strands.ready ? { section, strands } : undefined;
    const friction = screw.ready ? screw.operands : undefined;
    const found = guards({
      stress,
      expandedUncertainty,
      peakStress: peakStress(worksheet, stress, section),
      yieldStrength: target.yieldStrength,
      bandStressLimit: target.makerLimitStress,
      wheelForce:
        force &&
        wheelForce(strandForce(stress, force.section.area), force.strands.strandHalfAngle),
      millForceLimit: target.makerLimitWheelForce,
      threadFriction: friction?.threadFrictionLow,
      selfLockingFriction: friction?.selfLockingFriction,
    });
    return ready({ found });
  });
}

/** The result, unless its stress touches a rail that stops. */
export function withinRails<Value extends object>(
  worksheet: Worksheet,
  setting: RailedStress,
  field: string,
  result: Value,
): Outcome<Value> {
  const rails = worksheetRails(worksheet, setting);
  return whenReady({ rails }, ({ rails: { found } }) => {
    const stop = found.find(({ level }) => level === 'stop');
    return stop ? refused(stop.code, stop.values, [field]) : ready(result);
  });
}

const limitNames = ['makerLimitStress', 'makerLimitWheelForce', 'yieldStrength'] as const;

function filledLimits(target: Worksheet['target']): Outcome<object> {
  const filled = limitNames.filter((name) => target[name] !== undefined);
  return boxes(Object.fromEntries(filled.map((name) => [name, [`target.${name}`, target[name]]])));
}

/** Tension with bending over the smaller wheel, at rest; undefined until wheel and band are known. */
function peakStress(
  { mill, band }: Worksheet,
  stress: number,
  section: Outcome<SectionResult>,
): number | undefined {
  const { wheelDiameter1, wheelDiameter2 = wheelDiameter1 } = mill;
  const { youngsModulus } = band;
  const known =
    section.ready &&
    isUsable(wheelDiameter1) &&
    isUsable(wheelDiameter2) &&
    isUsable(youngsModulus);
  if (!known) return undefined;
  const { thickness } = section.operands;
  const wheelDiameter = Math.min(wheelDiameter1, wheelDiameter2);
  return stress + edgeFactor * bendingStress({ youngsModulus, thickness, wheelDiameter });
}
