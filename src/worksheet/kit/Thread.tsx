/** The thread of the screw: by its standard name, or by its own measures. */
import type { JSX } from 'preact';
import { threadDesignations } from '../../core/threads.ts';
import { sheetView } from '../state/view.ts';
import { Box, BoxTrouble, idOf } from './Box.tsx';
import { Choice } from './Choice.tsx';

const NAMED = 'tensioner.thread.designation';

/** A box with the listed names to choose from. */
export function NamedThread(): JSX.Element {
  const { refusals, type, text } = sheetView();
  const trouble = refusals[NAMED] ? ` ${idOf(NAMED)}-trouble` : '';
  return (
    <div class="field">
      <label for={idOf(NAMED)}>Thread</label>
      <div class="field-box is-wide">
        <input
          id={idOf(NAMED)}
          class="box"
          type="text"
          list="threads"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          maxLength={40}
          value={text.designation}
          aria-invalid={refusals[NAMED] ? 'true' : undefined}
          aria-describedby={`${idOf(NAMED)}-hint${trouble}`}
          data-path={NAMED}
          enterKeyHint="next"
          onInput={(event) => type(NAMED, event.currentTarget.value)}
        />
        <datalist id="threads">
          {threadDesignations.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      </div>
      <p class="hint" id={`${idOf(NAMED)}-hint`}>
        Such as Tr20x4, M24, 1-5 Acme, 5/8-11 UNC.
      </p>
      <BoxTrouble path={NAMED} />
    </div>
  );
}

/** Shape, outside diameter, pitch. */
export function OwnThread(): JSX.Element {
  return (
    <>
      <Choice
        name="form"
        legend="Shape of its ridges"
        options={[
          ['trapezoidal', 'trapezoidal, 30°'],
          ['acme', 'Acme, 29°'],
          ['square', 'square'],
          ['v60', 'V, 60°'],
        ]}
      />
      <Box path="tensioner.thread.outsideDiameter" />
      <Box path="tensioner.thread.pitch" />
    </>
  );
}
