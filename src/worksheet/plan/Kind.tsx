/** What tightens the band, asked before the plan's loads: the same choice as in part 1. */
import { fieldAt } from '../../form/paths.ts';
import { part } from '../kit/part.tsx';

const PATH = 'tensioner.kind';

/** The two buttons; a group of their own, beside those of part 1. */
export const Kind = part((_, sheet) => {
  const field = fieldAt(PATH);
  const options = 'options' in field ? Object.entries(field.options) : [];
  return (
    <fieldset class="choice">
      <legend>{field.label}</legend>
      {options.map(([value, label]) => (
        <label key={value}>
          <input
            type="radio"
            name="plan-kind"
            value={value}
            checked={sheet.chosen(PATH) === value}
            onChange={() => sheet.run({ do: 'choose', path: PATH, text: value })}
          />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
});
