/** A choice of the sheet: native radio buttons under a name. */
import type { JSX } from 'preact';
import type { ChoiceName } from '../../form/text.ts';
import { sheetView } from '../state/view.ts';

interface Props<Name extends ChoiceName> {
  readonly name: Name;
  readonly legend: string;
  readonly options: readonly (readonly [value: string, label: string])[];
}

/** Radio buttons; the first option is chosen on a new sheet. */
export function Choice<Name extends ChoiceName>({
  name,
  legend,
  options,
}: Props<Name>): JSX.Element {
  const { text, choose } = sheetView();
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      {options.map(([value, label]) => (
        <label key={value}>
          <input
            type="radio"
            name={`choice-${name}`}
            value={value}
            checked={text.choices[name] === value}
            onChange={() => choose(name, value)}
          />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
}
