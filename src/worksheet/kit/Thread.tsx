/** The thread of the screw: by its standard name, or by its own measures. */
import type { JSX } from 'preact';
import { threadDesignations } from '../../core/threads.ts';
import { fieldAt } from '../../form/paths.ts';
import { Box, BoxInput, BoxTrouble } from './Box.tsx';
import { Choice } from './Choice.tsx';
import { idOf } from './ids.ts';
import { late } from './late.tsx';
import { part } from './part.tsx';

const NAMED = 'tensioner.thread.designation';

const LateThreadRead = late(() => import('../insides/ThreadRead.tsx'), 'ThreadRead');

/** A box with the listed names to choose from; what is read out of what was typed is fetched. */
export const NamedThread = part((_, sheet) => {
  const { label, hint } = fieldAt(NAMED);
  return (
    <div class="field">
      <label for={idOf(NAMED)}>{label}</label>
      <div class="field-box is-wide">
        <BoxInput path={NAMED} list="threads" describedBy={`${idOf(NAMED)}-hint`} />
        <datalist id="threads">
          {threadDesignations.map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
      </div>
      <p class="hint" id={`${idOf(NAMED)}-hint`}>
        {hint}
      </p>
      <BoxTrouble path={NAMED} />
      {sheet.text(NAMED) && <LateThreadRead />}
    </div>
  );
});

/** Shape, outside diameter, pitch. */
export function OwnThread(): JSX.Element {
  return (
    <>
      <Choice path="tensioner.thread.form" />
      <Box path="tensioner.thread.outsideDiameter" />
      <Box path="tensioner.thread.pitch" />
    </>
  );
}
