/**
 * How each cause is avoided, said to what this learner did: nobody is told to do what is done already.
 * Units: SI in (Pa, N·m); text in the reader's units.
 */
import type { Cause, Lifted, Stage } from '../../core/bench.ts';
import { formatFixed, THIN_SPACE } from '../../units/format-number.ts';
import { unitLabel } from '../../units/label.ts';
import { fromSi, toSi } from '../../units/si-value.ts';
import { doneAt } from '../state/answering.ts';
import type { View } from '../state/view.ts';
import { inSteps } from '../words/account-words.ts';

const PLAIN: Readonly<Record<Exclude<Cause, 'toe' | 'warmed' | 'sum'>, string>> = {
  scatter: 'No series is without. A longer bar makes it smaller.',
  slipped: 'Set clamps with care. Let off, and see whether the hand returns.',
  noLoad: 'Try the handle on the slack band, in small steps.',
  firstReading: 'Draw the line through the upper rows back to the zero.',
  oneStrand: 'Two strands share the force on the wheel.',
  label: 'Measure width and thickness.',
  misread: 'Start at the nearest number, and count the marks.',
  turns: 'Read the small hand first, every time.',
};

const FIRST = 0.1; // of the load: low enough to see the band straighten
const UPPER = 0.5; // of the load: from there up most bands are straight

/** The series that a stage is about. */
const takenOf = ({ series }: Stage, { bench }: View) =>
  bench.taken.filter(({ attempt }) => series.length === 0 || series.includes(attempt));

function ofWarmth(stage: Stage, view: View): string {
  const gloved = takenOf(stage, view).filter(({ hands }) => hands === 'gloved').length;
  if (gloved === 0) return 'Wear gloves, and be quick.';
  return gloved === takenOf(stage, view).length
    ? 'Not your mistake: gloves kept it small, and this much is left.'
    : 'Wear gloves in every series, and be quick.';
}

function ofSlips(stage: Stage, view: View): string {
  return takenOf(stage, view).every(({ clamps }) => clamps === 'careful')
    ? 'Not your mistake: even careful clamps may slip. Let off, and see whether the hand returns.'
    : PLAIN.slipped;
}

/** Where rows should begin: a tenth of the load above the no-load torque, up to the next whole step of the wrench. */
function ofStraightening(view: View): string {
  const { system } = view.bench;
  const { hidden, told } = view.mill;
  const load = told.usualTorque - hidden.dragTorque;
  const steps = Math.ceil(fromSi(hidden.dragTorque + FIRST * load, 'torque', system));
  const { rows } = doneAt(view);
  const pulling = rows.filter(({ torque }) => torque > hidden.dragTorque);
  const upper = pulling.filter(({ torque }) => torque >= hidden.dragTorque + UPPER * load);
  const start = `${formatFixed(steps, 0)}${THIN_SPACE}${unitLabel('torque', system)}`;
  const lacks = [
    pulling.every(({ torque }) => torque > toSi(steps, 'torque', system)) &&
      `Start at ${start}, above the no-load torque.`,
    2 * upper.length <= pulling.length && 'Take most rows in the upper half of the load.',
  ].filter((each) => each !== false);
  return lacks.length > 0 ? lacks.join(' ') : 'Not your mistake: your rows were well spread.';
}

/** The worksheet's number is the learner's, another, or there is none. */
function ofSum({ measured, end }: Lifted, { bench }: View): string {
  if (!measured) return 'The worksheet finds no stress in these rows to hold it against.';
  const isSame = inSteps(measured.stress, bench.system) === inSteps(end ?? 0, bench.system);
  return isSame
    ? 'The worksheet finds the same in these rows.'
    : 'The worksheet works out the same rows.';
}

/** It. */
export function remedyInWords(stage: Stage, lifted: Lifted, view: View): string {
  switch (stage.cause) {
    case 'toe':
      return ofStraightening(view);
    case 'warmed':
      return ofWarmth(stage, view);
    case 'slipped':
      return ofSlips(stage, view);
    case 'sum':
      return ofSum(lifted, view);
    default:
      return PLAIN[stage.cause];
  }
}
