/** A choice of the sheet: native radio buttons under a name. */
import type { ChoiceField } from '../../form/field.ts';
import { type ChoicePath, fieldAt } from '../../form/paths.ts';
import { part } from './part.tsx';

/** Radio buttons; the first option is chosen on a new sheet. */
export const Choice = part<{ readonly path: ChoicePath }>(({ path }, sheet) => {
  const { label: legend, options } = fieldAt(path) as ChoiceField;
  const chosen = sheet.chosen(path);
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      {Object.entries(options).map(([value, label]) => (
        <label key={value}>
          <input
            type="radio"
            name={`choice-${path}`}
            value={value}
            checked={chosen === value}
            onChange={() => sheet.run({ do: 'choose', path, text: value })}
          />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
});
