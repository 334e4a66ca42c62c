/** A box for words, as wide as its part. */
import type { JSX } from 'preact';
import { type BoxPath, fieldAt } from '../../form/paths.ts';
import { BoxInput, BoxTrouble, type CellProps } from './Box.tsx';
import { idOf } from './ids.ts';
import { part } from './part.tsx';

/** A box for words in which paper shows all of them, on as many lines as they take. */
export const WordsInput = part<CellProps>((props, sheet) => (
  <>
    <BoxInput {...props} />
    {sheet.text(props.path) !== '' && (
      <span class="written-out" aria-hidden="true">
        {sheet.text(props.path)}
      </span>
    )}
  </>
));

interface Props {
  readonly path: BoxPath;
  readonly label?: string; // where it is called otherwise than on the form
}

/** Label, box, and what is wrong with it. */
export function WordsBox({ path, label = fieldAt(path).label }: Props): JSX.Element {
  return (
    <div class="field is-words">
      <label for={idOf(path)}>{label}</label>
      <div class="field-box is-wide">
        <WordsInput path={path} />
      </div>
      <BoxTrouble path={path} />
    </div>
  );
}
