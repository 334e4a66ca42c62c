/** One box of the sheet: label, what is typed, unit, and beside it what is wrong or odd. */
import type { JSX } from 'preact';
import { typedAt } from '../../form/edits.ts';
import { fieldAt } from '../../form/fields.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { sheetView } from '../state/view.ts';

/** The unit of a kind in both systems; the site's switch shows one. */
export function Unit({ kind }: { readonly kind: QuantityKind }): JSX.Element {
  return (
    <>
      <span class="q-metric">{unitLabel(kind, 'metric')}</span>
      <span class="q-us">{unitLabel(kind, 'us')}</span>
    </>
  );
}

interface BothProps {
  readonly metric: number;
  readonly us?: number; // where it is another round number there
  readonly kind: QuantityKind;
}

/** A quantity in both systems. */
export function Both({ metric, us = metric, kind }: BothProps): JSX.Element {
  return (
    <>
      <span class="q-metric">{formatQuantity(metric, kind, 'metric')}</span>
      <span class="q-us">{formatQuantity(us, kind, 'us')}</span>
    </>
  );
}

/** The id of the box at a path. */
export function idOf(path: string): string {
  return `box-${path.replaceAll('.', '-')}`;
}

/** Fractions and inch marks need letters and signs; a keypad of digits does for the rest. */
function keypad(kind: QuantityKind, isUs: boolean): 'decimal' | 'text' {
  return isUs && (kind === 'length' || kind === 'thickness') ? 'text' : 'decimal';
}

interface InputProps {
  readonly path: string;
  readonly label?: string; // where no visible label names it
  readonly describedBy?: string | undefined;
  readonly row?: number | undefined;
}

/** The box itself. */
export function BoxInput({ path, label, describedBy, row }: InputProps): JSX.Element {
  const { text, shown, refusals, doubts, type } = sheetView();
  const kind = fieldAt(path)?.kind;
  const trouble = (refusals[path] ?? doubts[path]) && `${idOf(path)}-trouble`;
  const isText = kind === undefined;
  return (
    <input
      id={idOf(path)}
      class="box"
      type="text"
      autocomplete="off"
      spellcheck={false}
      maxLength={200}
      inputMode={isText ? 'text' : keypad(kind, shown.system === 'us')}
      value={typedAt(text, path)}
      aria-label={label}
      aria-invalid={refusals[path] ? 'true' : undefined}
      aria-describedby={[describedBy, trouble].filter(Boolean).join(' ') || undefined}
      data-path={path}
      data-row={row}
      enterKeyHint="next"
      onInput={(event) => type(path, event.currentTarget.value)}
    />
  );
}

/** What is wrong or odd about a box, beside it. */
export function BoxTrouble({ path }: { readonly path: string }): JSX.Element | null {
  const { refusals, doubts } = sheetView();
  const [refusal, doubt] = [refusals[path], doubts[path]];
  if (!refusal && !doubt) return null;
  return (
    <p class={refusal ? 'refusal' : 'refusal doubt'} id={`${idOf(path)}-trouble`}>
      {refusal ?? doubt}
    </p>
  );
}

/** A labelled box on its own line. */
export function Box({ path }: { readonly path: string }): JSX.Element | null {
  const field = fieldAt(path);
  if (!field) return null;
  const { label, of, kind, hint, whenEmpty } = field;
  const hasHint = hint !== undefined || whenEmpty !== undefined;
  return (
    <div class="field">
      <label for={idOf(path)}>
        <span>
          {of && <span class="visually-hidden">{of}: </span>}
          {label}
        </span>
      </label>
      <div class="field-box">
        <BoxInput path={path} describedBy={hasHint ? `${idOf(path)}-hint` : undefined} />
        <span class="unit">
          <Unit kind={kind} />
        </span>
      </div>
      {hasHint && (
        <p class="hint" id={`${idOf(path)}-hint`}>
          {hint}
          {whenEmpty !== undefined && (
            <>
              {hint && ' '}Left empty: <Both metric={whenEmpty} kind={kind} />.
            </>
          )}
        </p>
      )}
      <BoxTrouble path={path} />
    </div>
  );
}
