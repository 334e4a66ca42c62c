/** One of a few, as native radio buttons under a name. */
import type { JSX } from 'preact';

interface Props<Name extends string> {
  readonly name: string;
  readonly legend: string;
  readonly options: Readonly<Record<Name, string>>;
  readonly chosen: Name;
  readonly choose: (option: Name) => void;
}

/** The buttons. */
export function Radios<Name extends string>(props: Props<Name>): JSX.Element {
  const { name, legend, options, chosen, choose } = props;
  return (
    <fieldset class="radios">
      <legend>{legend}</legend>
      {(Object.entries(options) as [Name, string][]).map(([option, words]) => (
        <label key={option}>
          <input
            type="radio"
            name={name}
            value={option}
            checked={option === chosen}
            onChange={() => choose(option)}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}
