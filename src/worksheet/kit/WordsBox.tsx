/** A box for words, as wide as its part. */
import type { JSX } from 'preact';
import { type BoxPath, fieldAt } from '../../form/paths.ts';
import { BoxInput, BoxTrouble } from './Box.tsx';
import { idOf } from './ids.ts';

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
        <BoxInput path={path} />
      </div>
      <BoxTrouble path={path} />
    </div>
  );
}
