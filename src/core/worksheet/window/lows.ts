/**
 * The low edges of the worksheet's window: what the band needs to hold on its rims, and to keep the teeth in line.
 * Units: SI only (Pa).
 * Source: core/tightness; the support is taken as rigid, which asks for most.
 */
import { bandSteel, leastMargins } from '../../assumptions.ts';
import { massPerLength } from '../../span/band-mass.ts';
import { toothOffset } from '../../span/twist.ts';
import { stressToGrip, stressToKeepStraight } from '../../tightness.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import type { Chain } from '../predict/chain.ts';

/** The stress at an edge. */
export interface EdgeStress {
  readonly stress: number; // Pa
}

const widthOverTeeth = ({ band }: Worksheet) =>
  knownInputs({ teeth: ['band.widthOverTeeth', band.widthOverTeeth] });

/** The band with its teeth as it runs. */
export function runningBand(worksheet: Worksheet, { section }: Pick<Chain, 'section'>) {
  const { speed, power } = worksheet.demands;
  const known = knownInputs({
    speed: ['demands.speed', speed],
    power: ['demands.power', power],
  });
  const needs = { section, known, over: widthOverTeeth(worksheet) };
  return whenReady(needs, ({ section: { operands }, known, over: { teeth } }) => {
    const mass = massPerLength({ ...operands, density: bandSteel.density, widthOverTeeth: teeth });
    return ready({ band: { massPerLength: mass, speed: known.speed }, power: known.power });
  });
}

/** Stress that leaves the usual margin against slip on the wheel with the least wrap. */
export function gripEdge(worksheet: Worksheet, chain: Chain): Outcome<EdgeStress> {
  const { section, strands } = chain;
  const rim = knownInputs({ friction: ['demands.rimFriction', worksheet.demands.rimFriction] });
  const needs = { section, strands, rim, running: runningBand(worksheet, chain) };
  return whenReady(needs, ({ section: { area }, strands: { strandHalfAngle }, rim, running }) => {
    const grip = { ...rim, wrap: Math.PI - 2 * strandHalfAngle };
    return ready({
      stress: stressToGrip({ ...running, grip, area, share: 0, margin: leastMargins.slip }),
    });
  });
}

/** Stress at which the push moves the teeth as far as the reader grants it; refused for a band thicker than wide. */
export function straightEdge(worksheet: Worksheet, { section }: Chain): Outcome<EdgeStress> {
  const { guideSpan, push, movement } = worksheet.demands;
  const known = knownInputs({
    span: ['demands.guideSpan', guideSpan],
    push: ['demands.push', push],
    movement: ['demands.movement', movement],
    youngsModulus: ['band.youngsModulus', worksheet.band.youngsModulus],
  });
  const needs = { section, known, over: widthOverTeeth(worksheet) };
  return whenReady(needs, ({ section: { operands }, known, over: { teeth } }) => {
    const { bodyWidth: width, thickness } = operands;
    if (thickness > width)
      return refused('outOfRange', { was: thickness }, ['band.thickness', 'band.bodyWidth']);
    const offset = { toothOffset: toothOffset(teeth, width), ends: 'guides' } as const;
    const { shearModulus } = bandSteel;
    return ready({
      stress: stressToKeepStraight({ ...known, ...offset, shearModulus, width, thickness }),
    });
  });
}
