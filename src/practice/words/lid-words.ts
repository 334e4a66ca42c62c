/**
 * What is said when the lid is lifted.
 * Units: SI in (Pa, N·m); text in the reader's units.
 */
import type { Cost, Lifted, Mistake, Slip } from '../../core/bench.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { say } from './say.ts';

/** What each mistake is called, and how it is avoided. */
export const MISTAKE_WORDS: Readonly<Record<Mistake, readonly [name: string, remedy: string]>> = {
  misread: ['A reading off the mark', 'Start at the nearest number, and count the marks.'],
  turns: ['A whole turn lost or added', 'Read the small hand first, every time.'],
  slipped: [
    'A clamp that slipped',
    'Set clamps with care. Let off, and see whether the hand returns.',
  ],
  warmed: ['A bar warmed by hands', 'Wear gloves, and be quick.'],
  noLoad: ['The no-load torque', 'Try the handle on the slack band.'],
};

/** The same of what goes wrong in working the stress out. */
export const SLIP_WORDS: Readonly<Record<Slip, readonly [name: string, remedy: string]>> = {
  firstReading: [
    'The first row taken for zero',
    'Draw the line through the upper rows back to the zero.',
  ],
  oneStrand: ['One strand counted for two', 'Two strands share the force on the wheel.'],
  label: ['The label’s section, not the band’s', 'Measure width and thickness.'],
};

const percent = (share: number, system: UnitSystem) => say(Math.abs(share), 'percent', system, 2);

const SMALL = 0.5e6; // Pa: less is not worth a number

/** A cost with its sign; where the rows give no stress, what they would give without the mistake. */
export function costInWords(
  { cost, without }: Pick<Cost, 'cost' | 'without'>,
  system: UnitSystem,
): string {
  if (cost !== undefined) {
    if (Math.abs(cost) < SMALL) return 'next to nothing';
    return `${say(Math.abs(cost), 'stress', system, 2)} too ${cost > 0 ? 'high' : 'low'}`;
  }
  return without === undefined
    ? 'no stress either way'
    : `without it, ${say(without, 'stress', system)}`;
}

const CLOSE = 0.05; // of the truth: as well as shop tools do

/** The answer beside the truth. */
export function verdict({ truth, topTorque }: Lifted, answer: number, system: UnitSystem): string {
  const [at, is, yours] = [
    say(topTorque, 'torque', system),
    say(truth, 'stress', system),
    say(answer, 'stress', system),
  ];
  const off = answer / truth - 1;
  const truthIs = `At ${at} the band really feels ${is}.`;
  if (Math.abs(off) <= CLOSE)
    return `${truthIs} Your ${yours} is within ${percent(Math.max(Math.abs(off), 0.001), system)}: as close as shop tools get.`;
  return `${truthIs} Your ${yours} is ${percent(off, system)} too ${off > 0 ? 'high' : 'low'}.`;
}

/** What the learner's rows measure. */
export function rowsInWords({ measured, truth }: Lifted, system: UnitSystem): string {
  if (!measured)
    return 'The worksheet finds no stress in your rows: they are too few, or too uneven. Open them there, and it says why.';
  const { low, high } = measured;
  const range = `${say(Math.max(0, low), 'stress', system)} to ${say(high, 'stress', system)}`;
  const holds = low <= truth && truth <= high;
  return `The worksheet finds ${range} in your rows. The truth is ${holds ? 'inside' : 'outside'}.`;
}
