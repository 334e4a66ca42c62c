/** What else can be tried: the slack handle, the note. */
import { Box } from '../parts/Box.tsx';
import type { DeskProps } from '../parts/desk.ts';
import { notesInWords, triesInWords } from './heard.ts';

function Heard({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <div>
      <p class="label">{title}</p>
      <ol class="bench-heard">
        {lines.map((line, at) => (
          <li key={at}>{line}</li>
        ))}
      </ol>
    </div>
  );
}

/** What else can be tried: the slack handle, the note. */
export function OtherTries({ desk }: { readonly desk: DeskProps }) {
  const { view, press } = desk;
  return (
    <div class="bench-tries">
      <div class="bench-step">
        <p>
          With the band slack, the lowest torque that turns the handle is the no-load torque. Set
          the wrench above, then try.
        </p>
        <button class="button" type="button" onClick={() => press('try')}>
          Try the handle on the slack band
        </button>
        <Heard title="Tried" lines={triesInWords(view)} />
        <Box
          name="drag"
          label="No-load torque, as I found it"
          system={view.bench.system}
          desk={desk}
        />
      </div>
      <div class="bench-step">
        <p>
          Pluck the lower strand, from wheel to wheel. A tuner says the note, to within half a
          percent or so.
        </p>
        <button class="button" type="button" onClick={() => press('pluck')}>
          Pluck it
        </button>
        <Heard title="Heard" lines={notesInWords(view)} />
      </div>
    </div>
  );
}
