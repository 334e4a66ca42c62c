/**
 * The frame's stiffness out of turns counted and stretch read between two loads, and whether it shows at all.
 * Units: SI.
 * Source: springs in a row (core/turns); a turn read to a step twice over is uncertain by step/√6, derived here; a dial
 * is true to one graduation, `dial-standards`, from memory.
 */
import {
  bandSteel,
  coverage,
  dialRepeatability,
  sectionHalfWidths,
} from '../../core/assumptions.ts';
import { loopLengthEqual } from '../../core/loop.ts';
import { frameCompliance, isFrameResolved, totalStiffness } from '../../core/turns.ts';
import { STEEL } from './mill.ts';
import { GAUGE, MILLS } from './mills.worked.ts';
import { forceForStress, millBandStiffness, nutLead } from './nut-travel.ts';

const mill = MILLS.stiffFrame;
const lead = nutLead(mill);
const loopLength = loopLengthEqual(mill);
const bandStiffness = millBandStiffness(mill);

/** The rig on the band of the mill with the stiff frame, and how well it reads. */
export const RIG = {
  ...GAUGE,
  repeatability: dialRepeatability,
} as const;

/** Steps to which the turns can be read, in turns. */
export const TURN_STEPS = {
  fiveDegrees: 1 / 72,
  fifteenDegrees: 1 / 24,
  eighth: 1 / 8,
  quarter: 1 / 4,
} as const;

/** Standard uncertainty of E·A as a share: modulus, thickness and width, each rectangular. */
const STEEL_DOUBT =
  Math.hypot(
    bandSteel.youngsModulusHalfWidth / bandSteel.youngsModulus,
    sectionHalfWidths.thickness / mill.thickness,
    sectionHalfWidths.bodyWidth / mill.bodyWidth,
  ) / Math.sqrt(3);

/** Two readings as differences. */
export interface CountedReading {
  readonly turns: number;
  readonly stretch: number; // m over the gauge length
  readonly turnStep: number; // turns
}

/** Standard uncertainty of a stretch between two readings, m. */
const stretchDoubt = Math.hypot(RIG.repeatability * Math.SQRT2, RIG.graduation / Math.sqrt(3));

/** Standard uncertainty of everything together as a share of it: turns and stretch. */
function givenDoubt({ turns, stretch, turnStep }: CountedReading): number {
  return Math.hypot(turnStep / Math.sqrt(6) / turns, stretchDoubt / stretch);
}

/** From turns and stretch to the frame; 0 where the readings cannot show a stiffness. */
export function frameFromTurns(reading: CountedReading) {
  const stress = (STEEL.youngsModulus * reading.stretch) / RIG.gaugeLength;
  const force = forceForStress(mill, stress);
  const counted = { turns: reading.turns, lead, wheelForce: force };
  const compliance = frameCompliance(counted, { bandStiffness });
  const total = totalStiffness(counted);
  const doubt = Math.hypot(givenDoubt(reading) / total, compliance * STEEL_DOUBT);
  const resolved = isFrameResolved(compliance, doubt);
  const softest = compliance + coverage.factor * doubt;
  return {
    readStress: stress,
    readForce: force,
    nutTravel: reading.turns * lead,
    bandWay: ((reading.stretch / RIG.gaugeLength) * loopLength) / 2,
    frameGive: compliance * force,
    // The filled-in formula says what it says: below 0 where the dial shows more than the turns can give.
    frameQuotient: compliance === 0 ? 0 : 1 / compliance,
    giveDoubt: coverage.factor * doubt * force,
    foundTotal: total,
    resolved: resolved ? 1 : 0,
    frameFound: resolved ? 1 / compliance : 0,
    frameLow: softest > 0 ? 1 / softest : 0,
    frameHigh: resolved ? 1 / (compliance - coverage.factor * doubt) : 0,
  };
}
