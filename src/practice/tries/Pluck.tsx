/** The note of the plucked strand. Fetched when it is first wanted. */
import type { DeskProps } from '../parts/desk.ts';
import { Told } from '../parts/Told.tsx';
import { notesInWords } from './heard.ts';

/** The button, and what was heard. */
export function Pluck({ desk }: { readonly desk: DeskProps }) {
  return (
    <div class="bench-step">
      <p>
        Pluck the lower strand, from wheel to wheel. A tuner says the note, to within half a percent
        or so. The last note goes onto the worksheet and under the lid.
      </p>
      <button class="button" type="button" onClick={() => desk.press('pluck')}>
        Pluck it
      </button>
      <Told title="Heard" lines={notesInWords(desk.view)} />
    </div>
  );
}
