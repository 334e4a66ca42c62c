/** A labelled box for a whole number, with what is wrong about it beneath. */
import type { ComponentChildren, JSX } from 'preact';
import type { Whole } from './whole.ts';

interface Props {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly read: Whole;
  readonly type: (text: string) => void;
  /** What stands behind the box: a button, a limit. */
  readonly children?: ComponentChildren;
}

/** The box; it keeps what was typed, whatever it is. */
export function WholeBox({ id, label, text, read, type, children }: Props): JSX.Element {
  return (
    <div class="whole">
      <label for={id}>{label}</label>
      <div class="whole-line">
        <input
          id={id}
          class="box"
          type="text"
          inputMode="numeric"
          autocomplete="off"
          maxLength={24}
          value={text}
          aria-invalid={read.ok ? undefined : 'true'}
          aria-describedby={read.ok ? undefined : `${id}-trouble`}
          onInput={({ currentTarget }) => type(currentTarget.value)}
        />
        {children}
      </div>
      {!read.ok && (
        <p class="refusal" id={`${id}-trouble`}>
          {read.reason}
        </p>
      )}
    </div>
  );
}
