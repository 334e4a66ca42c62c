/** Two boxes on one line: the ends of a range. */
import type { JSX } from 'preact';
import type { BoxPath } from '../../form/paths.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { BoxInput, BoxTrouble, Unit } from './Box.tsx';
import { idOf } from './ids.ts';

interface Props {
  readonly low: BoxPath;
  readonly high: BoxPath;
  readonly name: string;
  readonly hint: string;
  readonly unit?: QuantityKind;
}

/** The lowest and the highest of something, under one label. */
export function RangeBox({ low, high, name, hint, unit }: Props): JSX.Element {
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
        {unit && (
          <span class="unit">
            <Unit kind={unit} />
          </span>
        )}
      </div>
      <p class="hint" id={`${idOf(low)}-hint`}>
        {hint}
      </p>
      <BoxTrouble path={low} />
      <BoxTrouble path={high} />
    </div>
  );
}
