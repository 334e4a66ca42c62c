/** What the second opinions are called, what they cannot see, and whether they agree with dial and screw. */
import type { OpinionResult } from '../../core/worksheet.ts';
import type { BoxPath } from '../../form/paths.ts';

/** Their names in the results. */
export type OpinionName = 'note' | 'press' | 'loosening';

interface OpinionWords {
  readonly title: string;
  readonly says: string; // beside its bar
  readonly formula: string;
  readonly blind: string; // what it cannot see
  readonly boxes: readonly BoxPath[];
}

/** Each in words. */
export const OPINION: Readonly<Record<OpinionName, OpinionWords>> = {
  note: {
    title: 'Stress by the note of the span',
    says: 'Its note says',
    formula: 'σ = 4 · density · (span · note ÷ harmonic)² · mass with teeth, less stiffness',
    blind: 'A wrong body width or thickness hardly shows in it; a wrong span does, twice over.',
    boxes: ['second.note'],
  },
  press: {
    title: 'Stress by pressing the span',
    says: 'The push says',
    formula: 'σ = force · span ÷ (4 · yield · section), less stiffness and the push’s own stretch',
    blind: 'It gives a force; a wrong section makes the stress wrong by as much.',
    boxes: ['second.force', 'second.deflection'],
  },
  loosening: {
    title: 'Stress by tightening and loosening',
    says: 'The two torques say',
    formula: 'σ = π · (tighten − loosen) ÷ lead, over two strands and the section',
    blind: 'Friction in the thread and under the nut cancels; a slide that sticks does not.',
    boxes: ['second.tightening', 'second.loosening'],
  },
};

const HARMONIC = 'as if another harmonic had been heard: try';

/** Whether it agrees with what stands beside it. */
export function verdictOf(opinion: OpinionResult): string {
  const { agreementNumber: score, measured, predicted, likelyHarmonic } = opinion;
  if (score === undefined)
    return 'Nothing stands beside it yet: give the torque on the handle, and the four numbers or readings.';
  const other = measured ? 'what you measured' : 'what the screw predicts';
  if (Math.abs(score) <= 1)
    return measured && predicted
      ? `It agrees with ${other}.`
      : `It agrees with ${other}, as far as both are known.`;
  const way = score > 0 ? 'more' : 'less';
  const hint =
    likelyHarmonic === undefined
      ? 'Look at its boxes first, they are the cheapest to check.'
      : `It is ${HARMONIC} ${likelyHarmonic > 1 ? likelyHarmonic : 'the lowest note again'}.`;
  return `It does not agree: it says ${way} than ${other}. ${hint}`;
}
