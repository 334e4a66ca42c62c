/** A choice of the sheet: native radio buttons under a name. */
import type { JSX } from 'preact';
import type { ChoiceField } from '../../form/field.ts';
import { type ChoicePath, fieldAt } from '../../form/paths.ts';
import { part } from './part.tsx';

const UNASKED = 'unasked'; // nothing is said yet: no button of its own

interface TakeBackProps {
  readonly legend: string;
  readonly takeBack: () => void;
}

/** Takes back what was chosen, and leaves the cursor among the buttons. */
function TakeBack({ legend, takeBack }: TakeBackProps): JSX.Element {
  const press = (button: HTMLElement) => {
    button.closest('fieldset')?.querySelector('input')?.focus();
    takeBack();
  };
  return (
    <button
      class="button plain no-print"
      type="button"
      aria-label={`Not said: ${legend}`}
      onClick={({ currentTarget }) => press(currentTarget)}
    >
      Not said
    </button>
  );
}

/** Radio buttons; the first option is chosen on a new sheet, and none where that is that nothing is said. */
export const Choice = part<{ readonly path: ChoicePath }>(({ path }, sheet) => {
  const { label: legend, options } = fieldAt(path) as ChoiceField;
  const chosen: string = sheet.chosen(path);
  const offered = Object.entries(options).filter(([value]) => value !== UNASKED);
  const choose = (text: string) => sheet.run({ do: 'choose', path, text });
  return (
    <fieldset class="choice">
      <legend>{legend}</legend>
      {offered.map(([value, label]) => (
        <label key={value}>
          <input
            type="radio"
            name={`choice-${path}`}
            value={value}
            checked={chosen === value}
            onChange={() => choose(value)}
          />
          <span>{label}</span>
        </label>
      ))}
      {UNASKED in options && chosen !== UNASKED && (
        <TakeBack legend={legend} takeBack={() => choose(UNASKED)} />
      )}
    </fieldset>
  );
});
