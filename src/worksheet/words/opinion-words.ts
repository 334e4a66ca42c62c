/** What the second opinions are called, what they cannot see, and whether they agree with dial and screw. */
import type { OpinionResult } from '../../core/worksheet.ts';
import type { BoxPath } from '../../form/paths.ts';
import { partNumber } from '../folds/sheet-parts.ts';
import type { Shown } from '../state/shown.ts';

/** Their names in the results. */
export type OpinionName = 'note' | 'press' | 'loosening';

interface OpinionWords {
  readonly title: string;
  readonly says: string; // beside its bar
  readonly formula: string;
  readonly blind: string; // what it cannot see
  readonly boxes: readonly BoxPath[];
}

const WORDS: Readonly<Record<OpinionName, OpinionWords>> = {
  note: {
    title: 'Stress by the note of the span',
    says: 'Its note says',
    formula: 'σ = 4 · density · (span · note ÷ harmonic)² · mass with teeth, less stiffness',
    blind: 'A wrong body width or thickness hardly changes it. A wrong span counts twice.',
    boxes: ['second.note'],
  },
  press: {
    title: 'Stress by pressing the span',
    says: 'The push says',
    formula: 'σ = force · span ÷ (4 · yield · section), less stiffness and the push’s own stretch',
    blind: 'It measures a force: a wrong section makes the stress wrong by as much.',
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

const TWO_PRESSURES: OpinionWords = {
  title: 'Stress by pumping and letting down',
  says: 'The two pressures say',
  formula: 'σ = (pumping + letting down) ÷ 2 · piston area, over the strands and the section',
  blind: 'Friction of seal and slide cancels; a spring that draws the piston back does not.',
  boxes: ['second.pumping', 'second.lettingDown'],
};

/** Each in words. */
export const opinionWords = (name: OpinionName, { load }: Shown): OpinionWords =>
  name === 'loosening' && load.name === 'pressure' ? TWO_PRESSURES : WORDS[name];

/** Whether it agrees with what stands beside it. */
export function verdictOf(opinion: OpinionResult, { load }: Shown): string {
  const { agreementNumber: score, measured, predicted, likelyHarmonic } = opinion;
  if (score === undefined)
    return `There is nothing to compare it with yet: fill in the ${load.name} then, and the four numbers of part ${partNumber('start')} or readings.`;
  const other = measured ? 'what you measured' : `what the ${load.by} predicts`;
  if (Math.abs(score) <= 1)
    return measured && predicted
      ? `It agrees with ${other}.`
      : `It agrees with ${other}, as far as both are known.`;
  const way = score > 0 ? 'more' : 'less';
  const hint =
    likelyHarmonic === undefined
      ? 'Check its boxes first: that costs least.'
      : `You may have heard another harmonic: try ${likelyHarmonic > 1 ? likelyHarmonic : 'the lowest note again'}.`;
  return `It does not agree: it says ${way} than ${other}. ${hint}`;
}
