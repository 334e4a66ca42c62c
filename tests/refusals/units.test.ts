import { describe, expect, it } from 'vitest';
import { apparentStressThermal, thermalSlack, wheelForceDrift } from '../../src/core/drift.ts';
import {
  coilEnergy,
  kineticEnergy,
  recoilSpeed,
  stretchEnergy,
} from '../../src/core/loop/energy.ts';
import { screwEfficiency } from '../../src/core/screw/torque.ts';
import { massPerLength } from '../../src/core/span/band-mass.ts';
import { flatBendingStiffness, lateralStiffness } from '../../src/core/span/beam-under-tension.ts';
import { pinnedFrequency } from '../../src/core/span/clamped-frequency.ts';
import { pitchFromTension } from '../../src/core/span/pluck.ts';
import { effectiveLength } from '../../src/core/span/press.ts';
import { torsionFrequency, twistingStiffness } from '../../src/core/span/twist.ts';
import { pitchFromStress } from '../../src/core/span.ts';
import { basquinLifeRatio, peakStress, swtLifeRatio } from '../../src/core/wheel/life.ts';
import {
  centrifugalShare,
  runningWheelForce,
  strandsConstantForce,
  strandsUnderPower,
} from '../../src/core/wheel/running.ts';
import { bendingStress, centrifugalStress } from '../../src/core/wheel.ts';
import { moving, still, twisted, warmed } from './at-one.ts';

/** Each quantity with the unit it is refused in; `call` gets all at 1 but the named one. */
function refusals<Name extends string>(
  title: string,
  call: (values: Record<Name, number>) => unknown,
  units: Readonly<Record<Name, string>>,
): readonly (readonly [string, () => unknown, string])[] {
  const names = Object.keys(units) as Name[];
  const ones = Object.fromEntries(names.map((name) => [name, 1])) as Record<Name, number>;
  return names.map((name) => [
    `${title}: ${name}`,
    () => call({ ...ones, [name]: 0 }),
    `${name} must be above 0 ${units[name]} (was 0)`,
  ]);
}

const strip = { span: 1, ends: 'pinned', stress: 1 } as const;

const aboveNothing = [
  ...refusals('massPerLength', massPerLength, {
    density: 'kg/m³',
    thickness: 'm',
    widthOverTeeth: 'm',
    bodyWidth: 'm',
  }),
  ...refusals('flatBendingStiffness', flatBendingStiffness, {
    youngsModulus: 'Pa',
    width: 'm',
    thickness: 'm',
  }),
  ...refusals(
    'lateralStiffness',
    (beam) => lateralStiffness({ bendingStiffness: 1, ...beam }, 'pinned'),
    { tension: 'N', span: 'm' },
  ),
  ...refusals('pinnedFrequency', pinnedFrequency, {
    tension: 'N',
    massPerLength: 'kg/m',
    bendingStiffness: 'N·m²',
    span: 'm',
  }),
  ...refusals('wheelForceDrift', (mill) => wheelForceDrift({ ...warmed, ...mill }), {
    bandStiffness: 'N/m',
  }),
  ...refusals(
    'thermalSlack',
    ({ loopLength, centreDistance, diameter }) =>
      thermalSlack({
        band: { ...still, loopLength },
        frame: { ...still, centreDistance },
        wheels: { ...still, diameter },
      }),
    { loopLength: 'm', centreDistance: 'm', diameter: 'm' },
  ),
  ...refusals(
    'apparentStressThermal',
    (steel) => apparentStressThermal({ band: still, bar: still, ...steel }),
    { youngsModulus: 'Pa' },
  ),
  ...refusals('stretchEnergy', (band) => stretchEnergy({ stress: 1, ...band }), {
    youngsModulus: 'Pa',
    area: 'm²',
    loopLength: 'm',
  }),
  ...refusals('coilEnergy', coilEnergy, {
    youngsModulus: 'Pa',
    thickness: 'm',
    radius: 'm',
    area: 'm²',
    loopLength: 'm',
  }),
  ...refusals('kineticEnergy', (band) => kineticEnergy({ speed: 1, ...band }), {
    massPerLength: 'kg/m',
    loopLength: 'm',
  }),
  ...refusals('recoilSpeed', (steel) => recoilSpeed({ stress: 1, ...steel }), {
    youngsModulus: 'Pa',
    density: 'kg/m³',
  }),
  ...refusals('peakStress', (load) => peakStress({ edgeFactor: 1, ...load }), {
    tight: 'N',
    area: 'm²',
    bendingStress: 'Pa',
  }),
  ...refusals(
    'basquinLifeRatio',
    ({ amplitude, reference }) => basquinLifeRatio(amplitude, reference, 9),
    { amplitude: 'Pa', reference: 'Pa' },
  ),
  ...refusals('swtLifeRatio', (cycle) => swtLifeRatio(cycle, cycle, 9), {
    peak: 'Pa',
    amplitude: 'Pa',
  }),
  ...refusals(
    'pitchFromTension',
    (band) => pitchFromTension({ bendingStiffness: 0, ends: 'pinned', ...band }, 1),
    { massPerLength: 'kg/m', span: 'm' },
  ),
  ...refusals('effectiveLength', effectiveLength, {
    loopLength: 'm',
    axialStiffness: 'N',
    frameStiffness: 'N/m',
  }),
  ...refusals('centrifugalShare', (mill) => centrifugalShare({ supportStiffness: 1, ...mill }), {
    bandStiffness: 'N/m',
  }),
  ...refusals('runningWheelForce', ({ meanForce }) => runningWheelForce(meanForce, moving), {
    meanForce: 'N',
  }),
  ...refusals(
    'strandsConstantForce',
    ({ wheelForce }) => strandsConstantForce({ wheelForce, power: 0, band: moving }),
    { wheelForce: 'N' },
  ),
  ...refusals('strandsUnderPower', (mill) => strandsUnderPower({ power: 0, ...mill }), {
    meanForce: 'N',
    speed: 'm/s',
  }),
  ...refusals('screwEfficiency', screwEfficiency, { thrust: 'N', lead: 'm', torque: 'N·m' }),
  ...refusals('pitchFromStress', (steel) => pitchFromStress({ ...strip, ...steel }), {
    density: 'kg/m³',
    thickness: 'm',
    youngsModulus: 'Pa',
  }),
  ...refusals('twistingStiffness', (sizes) => twistingStiffness({ ...twisted, ...sizes }), {
    tension: 'N',
    shearModulus: 'Pa',
    span: 'm',
  }),
  ...refusals('torsionFrequency', (sizes) => torsionFrequency({ ...twisted, ...sizes }), {
    stress: 'Pa',
    density: 'kg/m³',
    shearModulus: 'Pa',
    span: 'm',
  }),
  ...refusals('bendingStress', bendingStress, {
    youngsModulus: 'Pa',
    thickness: 'm',
    wheelDiameter: 'm',
  }),
  ...refusals('centrifugalStress', (steel) => centrifugalStress({ speed: 1, ...steel }), {
    density: 'kg/m³',
  }),
];

describe('a quantity that must be above 0 is refused by name, with its unit', () => {
  it.each(aboveNothing)('%s', (_, call, message) => expect(call).toThrow(new RangeError(message)));
});
