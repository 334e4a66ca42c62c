/** The answer, and the lid over the truth. What is under it is fetched when it is lifted. */
import type { ComponentType } from 'preact';
import { topTorqueOf } from '../state/answering.ts';
import { boxReading, type View } from '../state/view.ts';
import { say } from '../words/say.ts';
import { Box } from './Box.tsx';
import type { DeskProps } from './desk.ts';

interface Props {
  readonly desk: DeskProps;
  readonly Lid: ComponentType<{ readonly view: View }> | undefined;
  readonly isTeachers: boolean;
}

/** Why the lid stays shut, where it must. */
function missing(view: View): string | undefined {
  if (topTorqueOf(view) === 0) return 'Write rows first: the lid waits for a measurement.';
  const read = boxReading(view.bench, 'answer', view.face);
  if (read.ok) return undefined;
  const isEmpty = view.bench.typed.answer.trim() === '';
  return isEmpty ? 'Type your stress first. After that, the lid opens.' : read.reason;
}

/** Box, button, lid. */
export function LidPlace({ desk, Lid, isTeachers }: Props) {
  const { view, run } = desk;
  const { bench } = view;
  const top = topTorqueOf(view);
  const torque = top > 0 ? say(top, 'torque', bench.system) : 'your top torque';
  const why = missing(view);
  const isOpen = bench.isLifted || isTeachers;
  return (
    <section class="bench-lid">
      <h2>Your answer</h2>
      <div class="bench-answer no-print">
        <Box
          name="answer"
          label={`Stress in the band at ${torque}`}
          hint="By your own sum, or from the worksheet."
          system={bench.system}
          desk={desk}
        />
        <button
          class="button"
          type="button"
          aria-describedby="bench-lid-why"
          disabled={!isOpen && why !== undefined}
          onClick={() => run({ do: bench.isLifted ? 'shut' : 'lift' })}
        >
          {bench.isLifted ? 'Shut the lid' : 'Lift the lid'}
        </button>
        <p class="hint" id="bench-lid-why">
          {isOpen ? '' : why}
        </p>
      </div>
      {isTeachers && (
        <p class="bench-teacher">
          <strong>Teacher’s link: the lid is open.</strong> Learners get the link without it, below.
        </p>
      )}
      {isOpen && (Lid ? <Lid view={view} /> : <p>One moment.</p>)}
    </section>
  );
}
