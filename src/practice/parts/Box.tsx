/** A box of the bench: label, what is typed, its unit, and what is wrong with it. */
import type { UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { BOXES, type BoxName } from '../state/boxes.ts';
import type { DeskProps } from './desk.ts';

interface Props {
  readonly name: BoxName;
  readonly label: string;
  readonly hint?: string;
  readonly system: UnitSystem;
  readonly desk: Pick<DeskProps, 'view' | 'run' | 'refusals'>;
  readonly describedBy?: string | undefined;
  /** What the Enter key presses. */
  readonly onEnter?: () => void;
}

/** The box with all that belongs to it. */
export function Box({ name, label, hint, system, desk, describedBy, onEnter }: Props) {
  const refusal = desk.refusals[name];
  const id = `bench-${name}`;
  const described = [describedBy, hint && `${id}-hint`, refusal && `${id}-trouble`].filter(Boolean);
  return (
    <div class="bench-field">
      <label for={id}>{label}</label>
      <div class="bench-box">
        <input
          id={id}
          class="box"
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          maxLength={60}
          value={desk.view.bench.typed[name]}
          aria-invalid={refusal ? 'true' : undefined}
          aria-describedby={described.join(' ') || undefined}
          onInput={(event) => desk.run({ do: 'type', box: name, text: event.currentTarget.value })}
          onKeyDown={(event) => {
            if (event.key === 'Enter') onEnter?.();
          }}
        />
        <span class="unit">{unitLabel(BOXES.kinds[name], system)}</span>
      </div>
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {refusal && (
        <p class="refusal" id={`${id}-trouble`}>
          {refusal}
        </p>
      )}
    </div>
  );
}
