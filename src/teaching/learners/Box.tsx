/** How many learners there are: one box, and what follows from it. */
import type { JSX } from 'preact';
import { WholeBox } from '../kit/WholeBox.tsx';
import { counted, type Whole } from '../kit/whole.ts';

/** What the box is drawn from. */
export interface LearnersView {
  readonly text: string;
  readonly read: Whole;
  /** How many hand-outs the workshop has for each learner. */
  readonly handouts: number;
  readonly type: (text: string) => void;
}

/** The box, and what to print for so many. */
export function LearnersBox({ text, read, handouts, type }: LearnersView): JSX.Element {
  return (
    <>
      <WholeBox id="learners" label="How many learners?" text={text} read={read} type={type} />
      {read.ok && (
        <p class="small" role="status">
          Print {read.value} of each hand-out, {counted(read.value * handouts, 'sheet')} in all, and{' '}
          {counted(read.value, 'problem sheet')}. The table of scores gets{' '}
          {counted(read.value, 'row')}.
        </p>
      )}
    </>
  );
}
