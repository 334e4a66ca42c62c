/**
 * The high edges of the worksheet's window: what the bent steel bears, and what keeps the life that is wanted.
 * Units: SI only (Pa).
 * Source: core/tightness; what speed and cut add is taken whole, as under a weight, which leaves least.
 */
import { edgeFactor, yieldShares } from '../../assumptions.ts';
import { type BentBand, stressToKeepLife, stressToPeak } from '../../tightness.ts';
import { centrifugalForce } from '../../wheel/running.ts';
import { bendingStress } from '../../wheel.ts';
import { smallerWheel } from '../decide/peak-stress.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import type { Chain } from '../predict/chain.ts';
import { type EdgeStress, runningBand } from './lows.ts';
import type { TodaysStress } from './today.ts';

/** What speed and cut add to the tension, Pa; nothing while neither is known. */
function runningRise(worksheet: Worksheet, chain: Chain): number {
  const running = runningBand(worksheet, chain);
  if (!running.ready || !chain.section.ready) return 0;
  const { band, power } = running;
  return (centrifugalForce(band) + power / (2 * band.speed)) / chain.section.area;
}

function bentBand(worksheet: Worksheet, chain: Chain): Outcome<BentBand> {
  if (worksheet.mill.strands === 'one')
    return ready({ bendingStress: 0, edgeFactor, runningRise: 0 });
  const known = knownInputs({
    wheelDiameter: ['mill.wheelDiameter1', smallerWheel(worksheet)],
    youngsModulus: ['band.youngsModulus', worksheet.band.youngsModulus],
  });
  return whenReady({ known, section: chain.section }, ({ known, section }) => {
    const bend = bendingStress({ ...known, thickness: section.operands.thickness });
    return ready({
      bendingStress: bend,
      edgeFactor,
      runningRise: runningRise(worksheet, chain),
    });
  });
}

/** Stress at which the peak comes to the share of the yield strength above which a band does not live long. */
export function yieldEdge(worksheet: Worksheet, chain: Chain): Outcome<EdgeStress> {
  const steel = knownInputs({ strength: ['target.yieldStrength', worksheet.target.yieldStrength] });
  const bent = bentBand(worksheet, chain);
  return whenReady({ steel, bent }, ({ steel: { strength }, bent }) =>
    ready({ stress: stressToPeak(bent, yieldShares.shortLife * strength) }),
  );
}

/** Stress that keeps the wanted part of the life at today's; refused where that is beyond all numbers. */
export function lifeEdge(
  worksheet: Worksheet,
  chain: Chain,
  today: Outcome<TodaysStress>,
): Outcome<EdgeStress> {
  const { lifeKept, lifeExponent } = worksheet.demands;
  const wish = knownInputs({
    kept: ['demands.lifeKept', lifeKept],
    exponent: ['demands.lifeExponent', lifeExponent],
  });
  const needs = { wish, bent: bentBand(worksheet, chain), today };
  return whenReady(needs, ({ wish, bent, today }) => {
    const stress = stressToKeepLife(bent, { ...wish, today: today.stress });
    if (!Number.isFinite(stress)) return refused('beyondNumbers', {}, ['demands.lifeExponent']);
    return ready({ stress });
  });
}
