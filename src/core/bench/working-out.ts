/**
 * How a learner may have worked the stress out of the rows: by the line, or with a slip. A slip is found only where the
 * answer is where it leads, far nearer than chance would have it, and clearly off the truth.
 * Units: SI only (Pa, m, N·m).
 * Source: definition; Hooke's law from elasticity.ts.
 */
import { bandSteel } from '../assumptions.ts';
import { stress as stressOfStretch } from '../elasticity.ts';
import type { LevelMill } from './levels.ts';
import { type Believed, believedArea, type NotedRow, notedStress } from './noted.ts';

/** A slip in working the stress out. */
export type Slip = 'firstReading' | 'oneStrand' | 'label';

/** A way from the rows to a stress at their top torque, Pa; undefined where they give none. */
export type Working = (rows: readonly NotedRow[]) => number | undefined;

/** A slip that was found, and the way that it takes. */
export interface FoundSlip {
  readonly slip: Slip;
  readonly working: Working;
}

const CLEARLY_OFF = 0.05; // of the truth, at least
const NEAREST = 0.006; // of truth or answer, at most, from where the slip leads: a sum rounded to three digits
const BY_CHANCE = 1 / 20; // of the way from the right sum to the answer, at most

/** How the rows of a mill give a stress, as the learner believes the mill to be. */
export type Method = (mill: LevelMill, believed: Believed) => Working;

/** The line through the rows, as the worksheet draws it. */
export const byLine: Method = (mill, believed) => (rows) => {
  const measured = notedStress(mill, rows, believed);
  return measured.ready ? measured.stress : undefined;
};

/** The top row of the rows less one of the same series that is taken for zero: the slack band's, or the first under torque. */
const fromZeroAt =
  ({ known, told }: LevelMill, zero: 'slack' | 'first'): Working =>
  (rows) => {
    const topTorque = Math.max(0, ...rows.map(({ torque }) => torque));
    const top = rows.findLast(({ torque }) => torque === topTorque);
    const start = rows.find(
      ({ series, torque }) => series === top?.series && torque > 0 === (zero === 'first'),
    );
    if (!top || !start || start === top) return undefined;
    const elongation = (top.dial - start.dial) * (told.runsBackwards ? -1 : 1);
    const { gaugeLength } = known;
    return stressOfStretch({ elongation, gaugeLength }, bandSteel.youngsModulus);
  };

const times =
  (share: number, working: Working): Working =>
  (rows) => {
    const stress = working(rows);
    return stress === undefined ? undefined : share * stress;
  };

/** All slips that the rows allow. */
function slips(mill: LevelMill, believed: Believed, method: Method): readonly FoundSlip[] {
  const line = method(mill, believed);
  const { bodyWidth, thickness } = mill.known;
  const worn = (bodyWidth * thickness) / believedArea(mill, believed);
  return [
    { slip: 'firstReading', working: fromZeroAt(mill, 'slack') },
    { slip: 'firstReading', working: fromZeroAt(mill, 'first') },
    { slip: 'oneStrand', working: times(2, line) },
    { slip: 'label', working: times(worn, line) },
  ];
}

interface Asked {
  readonly rows: readonly NotedRow[];
  readonly believed: Believed;
  readonly truth: number; // Pa
  readonly answer: number; // Pa
}

/** The one slip that explains an answer; undefined where none does, or chance may. */
export function foundSlip(
  mill: LevelMill,
  asked: Asked,
  method: Method = byLine,
): FoundSlip | undefined {
  const { rows, believed, truth, answer } = asked;
  const right = method(mill, believed)(rows) ?? truth;
  const isOff = [truth, right].every((from) => Math.abs(answer - from) > CLEARLY_OFF * truth);
  if (!isOff) return undefined;
  const size = Math.max(truth, Math.abs(answer));
  const most = Math.min(NEAREST * size, BY_CHANCE * Math.abs(answer - right));
  return slips(mill, believed, method).find(({ working }) => {
    const leads = working(rows);
    return leads !== undefined && Math.abs(answer - leads) <= most;
  });
}

/** Where each slip would lead with the same rows, Pa; undefined where they give no stress so. */
export const wouldLead = (
  mill: LevelMill,
  rows: readonly NotedRow[],
  believed: Believed,
): readonly { readonly slip: Slip; readonly stress: number | undefined }[] =>
  slips(mill, believed, byLine)
    .filter((_, at) => at > 0) // of the two first readings the one under torque
    .map(({ slip, working }) => ({ slip, stress: working(rows) }));
