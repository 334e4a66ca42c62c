/** The doors of the core by the names under which they are promised; whoever moves one finds out here. */
import { describe, expect, it } from 'vitest';

const PROMISED: Readonly<Record<string, readonly string[]>> = {
  elasticity: ['strain', 'stress', 'elongation'],
  section: ['sectionArea', 'strandForce', 'wheelForce'],
  screw: [
    'raisingTorque',
    'loweringTorque',
    'thrustFromTorque',
    'efficiency',
    'isSelfLocking',
    'raisingTorqueHandbook',
  ],
  threads: ['thread'],
  wheel: ['bendingStress', 'centrifugalStress', 'tensionRatio'],
  span: ['stressFromPitch', 'pitchFromStress', 'deflectionUnderPress', 'tensionFromPress'],
  summary: ['mean', 'standardDeviation'],
  student: ['tQuantile'],
  line: ['fitLine', 'fitLineBothErrors'],
  budget: ['propagate'],
  trials: ['propagateByTrials'],
  zero: ['zeroFromTorque', 'zeroFromTurns', 'zeroByUpperHalf', 'zeroFromSeveral'],
  agreement: ['agreementNumber', 'zetaScore', 'weightedMean'],
  worksheet: ['evaluateWorksheet'],
};
const doors = import.meta.glob<Readonly<Record<string, unknown>>>('../../src/core/*.ts');

describe('the doors of the core', () => {
  it.each(Object.entries(PROMISED))('%s offers what it promises', async (door, names) => {
    const offered = await doors[`../../src/core/${door}.ts`]?.();
    for (const name of names) expect(offered?.[name], `${door}.ts: ${name}`).toBeTypeOf('function');
  });
});
