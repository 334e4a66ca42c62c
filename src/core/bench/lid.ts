/**
 * The lid of the bench lifted: the truth at the learner's top torque, what the rows measure there, what each mistake
 * cost, and what others would have.
 * Units: SI only (Pa, m, N·m).
 * Source: definition; Hooke's law and the equilibrium of the wheel from elasticity.ts and section.ts.
 */
import { bandSteel } from '../assumptions.ts';
import { stress as stressOfStretch } from '../elasticity.ts';
import { sectionArea, strandForce, strandStress, wheelForce } from '../section.ts';
import { benchCosts, type Cost, type Done } from './costs.ts';
import type { LevelMill } from './levels.ts';
import { benchLooks } from './looks.ts';
import { believedArea, notedStress } from './noted.ts';
import { benchStress } from './series.ts';

/** A mistake in working the stress out. */
export type Slip = 'firstReading' | 'oneStrand' | 'label';

/** What is under the lid. */
export interface Lifted {
  readonly topTorque: number; // N·m, of the rows
  readonly truth: number; // Pa, there
  readonly measured:
    | { readonly stress: number; readonly low: number; readonly high: number }
    | undefined; // Pa
  readonly costs: readonly Cost[];
  readonly slips: readonly Cost<Slip>[]; // what each would add; made: the answer is where it leads
}

const NEAR = 0.04; // of the truth: the answer is where a slip leads

/** What the dial would say with the first row of the top series taken for zero, less what it says from the true zero. */
function fromFirstReading(mill: LevelMill, { taken, rows }: Done, topTorque: number): number {
  const { known, told } = mill;
  const top = rows.find(({ torque }) => torque === topTorque)?.series as number;
  const first = rows.find(({ series }) => series === top)?.place as number;
  const { looks, zero } = benchLooks(mill, taken[top] as Done['taken'][number]);
  const [slack, there] = [0, first].map((place) => looks[place]?.position as number);
  const growth = ((there as number) - (slack as number)) * (told.runsBackwards ? -1 : 1);
  const elongation = zero - growth * known.dialStep;
  return stressOfStretch({ elongation, gaugeLength: known.gaugeLength }, bandSteel.youngsModulus);
}

function slipsOf(mill: LevelMill, done: Done, topTorque: number, answer: number | undefined) {
  const { bodyWidth, thickness } = mill.known;
  const truth = benchStress(mill, topTorque);
  const strand = strandForce(truth, sectionArea({ width: bodyWidth, thickness }));
  const area = sectionArea({ width: bodyWidth, thickness });
  const label = believedArea(mill, { dragTorque: undefined, isMeasured: false });
  const costs: readonly (readonly [Slip, number])[] = [
    ['firstReading', fromFirstReading(mill, done, topTorque)],
    ['oneStrand', strandStress(wheelForce(strand), area) - truth],
    ['label', strandStress(strand, label) - truth],
  ];
  const leads = (cost: number) =>
    answer !== undefined &&
    Math.abs(answer - truth - cost) < NEAR * truth &&
    Math.abs(cost) > NEAR * truth;
  return costs.map(([mistake, cost]) => ({ mistake, cost, without: truth, isMade: leads(cost) }));
}

/**
 * Lifts the lid; `answer` is the learner's own stress at the top torque, Pa.
 * @throws RangeError without rows above the slack band, or where a row is no look that was taken
 */
export function liftedLid(mill: LevelMill, done: Done, answer: number | undefined): Lifted {
  const topTorque = Math.max(0, ...done.rows.map(({ torque }) => torque));
  if (topTorque === 0) throw new RangeError('rows must be at least one above 0 N·m (was none)');
  const costs = benchCosts(mill, done);
  const measured = notedStress(mill, done.rows, done.believed);
  return {
    topTorque,
    truth: benchStress(mill, topTorque),
    measured: measured && { stress: measured.stress, low: measured.low, high: measured.high },
    costs,
    slips: slipsOf(mill, done, topTorque, answer),
  };
}
