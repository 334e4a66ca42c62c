/** Beside a box: what was pasted or typed there and not taken, why, and the text itself to be copied. */
import type { JSX } from 'preact';
import type { NotTaken as Told } from '../state/view.ts';
import { CopyButton } from './CopyButton.tsx';
import { part } from './part.tsx';

interface NoteProps {
  readonly told: Told;
  readonly dismiss: () => void;
}

/** The note. */
export function NotTakenNote({ told: { says, text }, dismiss }: NoteProps): JSX.Element {
  return (
    <div class="not-taken" role="alert">
      <p>{says}</p>
      {text !== '' && (
        <>
          <pre>{text}</pre>
          <CopyButton label="Copy it" text={text} />
          <button class="button plain" type="button" onClick={dismiss}>
            I have seen it
          </button>
        </>
      )}
    </div>
  );
}

/** The note of one box, where there is one. */
export const NotTaken = part<{ readonly path: string }>(({ path }, sheet) => {
  const told = sheet.notTaken(path);
  return told ? <NotTakenNote told={told} dismiss={() => sheet.tell(undefined)} /> : null;
});
