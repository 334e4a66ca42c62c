/** The steps at the bench with the clamps: set them, tighten, read, let off. */
import type { Handling } from '../../core/bench.ts';
import { fromSi } from '../../units/si-value.ts';
import { boxReading, dialUnits } from '../state/view.ts';
import { handlingInWords } from '../words/series-words.ts';
import { Box } from './Box.tsx';
import type { DeskProps } from './desk.ts';

interface ChoiceProps<Name extends keyof Handling> {
  readonly name: Name;
  readonly legend: string;
  readonly options: readonly (readonly [Handling[Name], string])[];
  readonly desk: DeskProps;
}

function Choice<Name extends keyof Handling>({ name, legend, options, desk }: ChoiceProps<Name>) {
  return (
    <fieldset class="bench-choice">
      <legend>{legend}</legend>
      {options.map(([option, words]) => (
        <label key={option}>
          <input
            type="radio"
            name={`bench-${name}`}
            value={option}
            checked={desk.view.bench.next[name] === option}
            onChange={() => desk.run({ do: 'handle', how: { [name]: option } })}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** Clamping: choices before a series, what was chosen while one is on. */
export function ClampStep({ desk }: { readonly desk: DeskProps }) {
  const { view, press } = desk;
  const { series, bench } = view;
  const number = bench.taken.length + 1;
  return (
    <section class="bench-step">
      <h2>2 Clamp</h2>
      {series ? (
        <p>{handlingInWords(series)}</p>
      ) : (
        <>
          <Choice
            name="clamps"
            legend="Set the clamps"
            options={[
              ['quick', 'in a hurry, 1 minute'],
              ['careful', 'with care, 6 minutes'],
            ]}
            desk={desk}
          />
          <Choice
            name="hands"
            legend="Hold the bar in"
            options={[
              ['bare', 'bare hands'],
              ['gloved', 'gloves, slower'],
            ]}
            desk={desk}
          />
        </>
      )}
      {!series && (
        <button class="button" type="button" onClick={() => press('clamp')}>
          Clamp for series {number}
        </button>
      )}
    </section>
  );
}

/** The wrench and the turn. */
export function TightenStep({ desk }: { readonly desk: DeskProps }) {
  const { view, press, run } = desk;
  const { bench, face } = view;
  const step = (by: number) => {
    const read = boxReading(bench, 'wrench', face);
    const torque = read.ok ? fromSi(read.value, 'torque', bench.system) : 0;
    const text = String(Math.max(1, Math.round(torque + by)));
    run({ do: 'type', box: 'wrench', text });
  };
  return (
    <section class="bench-step">
      <h2>3 Tighten</h2>
      <div class="bench-wrench">
        <Box
          name="wrench"
          label="Set the wrench to"
          system={bench.system}
          desk={desk}
          onEnter={() => press('turn')}
        />
        <div class="bench-nudge">
          <button
            class="button"
            type="button"
            aria-label="−1 on the wrench"
            onClick={() => step(-1)}
          >
            −1
          </button>
          <button
            class="button"
            type="button"
            aria-label="+1 on the wrench"
            onClick={() => step(1)}
          >
            +1
          </button>
        </div>
      </div>
      <button class="button" type="button" onClick={() => press('turn')}>
        Turn until it clicks
      </button>
    </section>
  );
}

/** The reading, and the dial's zero. */
export function ReadStep({ desk }: { readonly desk: DeskProps }) {
  const { view, press } = desk;
  return (
    <section class="bench-step">
      <h2>4 Read</h2>
      <Box
        name="reading"
        label="The dial reads"
        hint="Small hand and big hand as one number."
        system={dialUnits(view.face)}
        desk={desk}
        describedBy="bench-description"
        onEnter={() => press('write')}
      />
      <div class="bench-buttons">
        <button class="button" type="button" onClick={() => press('write')}>
          Write it down
        </button>
        <button class="button plain" type="button" onClick={() => press('zero')}>
          Set the dial to zero
        </button>
      </div>
    </section>
  );
}

/** Letting off, which ends a series. */
export function LetOffStep({ desk }: { readonly desk: DeskProps }) {
  return (
    <section class="bench-step">
      <h2>6 Let off</h2>
      <p class="hint">
        The hand should come back to where it began: read it once more, and write it down. For
        another series, clamp anew.
      </p>
      <button
        class="button"
        type="button"
        disabled={!desk.view.series}
        onClick={() => desk.press('letOff')}
      >
        Let the band off
      </button>
    </section>
  );
}
