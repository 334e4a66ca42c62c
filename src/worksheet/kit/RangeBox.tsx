/** Two boxes on one line: the ends of a range. */
import type { JSX } from 'preact';
import type { BoxPath } from '../../form/paths.ts';
import { BoxInput, BoxTrouble } from './Box.tsx';
import { idOf } from './ids.ts';

interface Props {
  readonly low: BoxPath;
  readonly high: BoxPath;
  readonly name: string;
  readonly hint: string;
}

/** The lowest and the highest of something, under one label. */
export function RangeBox({ low, high, name, hint }: Props): JSX.Element {
  return (
    <div class="field">
      <label for={idOf(low)}>
        <span>
          {name}
          <span class="visually-hidden">, lowest</span>
        </span>
      </label>
      <div class="field-box is-range">
        <BoxInput path={low} describedBy={`${idOf(low)}-hint`} />
        <span class="unit">to</span>
        <BoxInput path={high} label={`${name}, highest`} />
      </div>
      <p class="hint" id={`${idOf(low)}-hint`}>
        {hint}
      </p>
      <BoxTrouble path={low} />
      <BoxTrouble path={high} />
    </div>
  );
}
