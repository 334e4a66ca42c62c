import { describe, expect, it } from 'vitest';
import { apparentStressThermal, thermalSlack, wheelForceDrift } from '../../src/core/drift.ts';
import { flankHalfAngle } from '../../src/core/screw/shape.ts';
import { thrustWork, torqueWork } from '../../src/core/screw/turn-work.ts';
import { efficiencyFromTwoTorques } from '../../src/core/screw/two-torques.ts';
import { massPerLength } from '../../src/core/span/band-mass.ts';
import { endLength } from '../../src/core/span/beam-under-tension.ts';
import { pitchFromTension } from '../../src/core/span/pluck.ts';
import { toothTipCompliance } from '../../src/core/span/twist.ts';
import { deflectionUnderPress } from '../../src/core/span.ts';
import { isFrameResolved } from '../../src/core/turns.ts';
import { stressRange } from '../../src/core/wheel/life.ts';
import {
  centrifugalForce,
  centrifugalShare,
  slipMargin,
  strandsUnderPower,
} from '../../src/core/wheel/running.ts';
import { widthParameter } from '../../src/core/wheel/wide-strip.ts';
import { moving, still, twisted, warmed } from './at-one.ts';

const grip = { friction: 0.2, wrap: 3 };
const withOffset = { ...twisted, toothOffset: -1 };

const beyondLimits: readonly (readonly [string, () => unknown, string])[] = [
  [
    'massPerLength',
    () => massPerLength({ density: 1, thickness: 1, widthOverTeeth: 1, bodyWidth: 2 }),
    'bodyWidth must be at most 1 m (was 2)',
  ],
  [
    'endLength',
    () => endLength({ tension: 1, bendingStiffness: -1 }),
    'bendingStiffness must be at least 0 N·m² (was -1)',
  ],
  [
    'wheelForceDrift',
    () => wheelForceDrift({ ...warmed, supportStiffness: -1 }),
    'supportStiffness must be between 0 and Infinity N/m (was -1)',
  ],
  [
    'thermalSlack, frame',
    () => thermalSlack({ ...warmed, frame: { ...warmed.frame, expansion: -1 } }),
    'frame expansion must be at least 0 1/K (was -1)',
  ],
  [
    'thermalSlack, wheels',
    () => thermalSlack({ ...warmed, wheels: { ...warmed.wheels, temperatureChange: 61 } }),
    'wheels temperatureChange must be between -60 and 60 K (was 61)',
  ],
  [
    'apparentStressThermal',
    () =>
      apparentStressThermal({ youngsModulus: 1, band: { ...still, expansion: -1 }, bar: still }),
    'band expansion must be at least 0 1/K (was -1)',
  ],
  [
    'pitchFromTension',
    () => pitchFromTension({ massPerLength: 1, bendingStiffness: 1, span: 2, ends: 'clamped' }, 1),
    'length held by the ends must be below 2 m (was 2)',
  ],
  [
    'centrifugalForce',
    () => centrifugalForce({ massPerLength: -1, speed: 1 }),
    'massPerLength must be at least 0 kg/m (was -1)',
  ],
  [
    'centrifugalShare',
    () => centrifugalShare({ bandStiffness: 1, supportStiffness: -1 }),
    'supportStiffness must be between 0 and Infinity N/m (was -1)',
  ],
  [
    'strandsUnderPower',
    () => strandsUnderPower({ meanForce: 5, power: 10, speed: 1 }),
    'half of the pull of the cut must be below 5 N (was 5)',
  ],
  [
    'slipMargin, slack',
    () => slipMargin({ tight: 5, slack: 6 }, moving, grip),
    'slack must be between 0 and 5 N (was 6)',
  ],
  [
    'slipMargin, lift',
    () => slipMargin({ tight: 5, slack: 4 }, { massPerLength: 5, speed: 1 }, grip),
    'centrifugal force must be below 5 N (was 5)',
  ],
  [
    'stressRange',
    () => stressRange({ tight: 5, area: 1, bendingStress: 1, edgeFactor: 1 }, 6),
    'slack must be between 0 and 5 N (was 6)',
  ],
  [
    'deflectionUnderPress',
    () =>
      deflectionUnderPress({ span: 1, bendingStiffness: 1, ends: 'pinned', tension: 1, force: -1 }),
    'force must be at least 0 N (was -1)',
  ],
  [
    'flankHalfAngle',
    () => flankHalfAngle({ halfAngle: 2 }),
    `halfAngle must be below ${Math.PI / 2} rad (was 2)`,
  ],
  [
    'torqueWork, start',
    () => torqueWork({ startTorque: -1, endTorque: 1, turns: 1 }),
    'startTorque must be at least 0 N·m (was -1)',
  ],
  [
    'torqueWork, end',
    () => torqueWork({ startTorque: 1, endTorque: -1, turns: 1 }),
    'endTorque must be at least 0 N·m (was -1)',
  ],
  [
    'thrustWork, thrust',
    () => thrustWork({ thrust: -1, lead: 1, turns: 1 }),
    'thrust must be at least 0 N (was -1)',
  ],
  [
    'thrustWork, lead',
    () => thrustWork({ thrust: 1, lead: -1, turns: 1 }),
    'lead must be at least 0 m (was -1)',
  ],
  [
    'isFrameResolved',
    () => isFrameResolved(Number.NaN, 0),
    'compliance must be a finite number of m/N (was NaN)',
  ],
  [
    'toothTipCompliance',
    () => toothTipCompliance(withOffset),
    'toothOffset must be at least 0 m (was -1)',
  ],
  [
    'efficiencyFromTwoTorques',
    () => efficiencyFromTwoTorques({ tighteningTorque: 5, looseningTorque: Number.NaN }),
    'looseningTorque must be a finite number of N·m (was NaN)',
  ],
  [
    'widthParameter',
    () => widthParameter({ width: 1, bendRadius: 1, thickness: 1, poissonsRatio: 1 }),
    'poissonsRatio must be between 0 and 0.5 (was 1)',
  ],
];

describe('a quantity beyond its limit is refused by name, with the limit and its unit', () => {
  it.each(beyondLimits)('%s', (_, call, message) => expect(call).toThrow(new RangeError(message)));
});
