/** One box of the sheet: label, what is typed, unit, and beside it what is wrong or odd. */
import type { JSX } from 'preact';
import { type Field, mostLetters } from '../../form/field.ts';
import { type BoxPath, fieldAt } from '../../form/paths.ts';
import { isBare } from '../../form/units.ts';
import { formatAbout } from '../../units/format-about.ts';
import type { QuantityKind } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import type { SheetView } from '../state/view.ts';
import { idOf } from './ids.ts';
import { late } from './late.tsx';
import { NotTaken } from './NotTaken.tsx';
import { part } from './part.tsx';

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

/** A quantity that is round in one system, in both. */
export function Both({ metric, us = metric, kind }: BothProps): JSX.Element {
  return (
    <>
      <span class="q-metric">{formatAbout(metric, kind, 'metric')}</span>
      <span class="q-us">{formatAbout(us, kind, 'us')}</span>
    </>
  );
}

/** Fractions and inch marks need letters and signs; a keypad of digits does for the rest. */
function keypad(field: Field, isUs: boolean): 'decimal' | 'text' {
  if (!('kind' in field)) return 'text';
  return isUs && (field.kind === 'length' || field.kind === 'thickness') ? 'text' : 'decimal';
}

/** Which box, and what names it. */
export interface CellProps {
  readonly path: BoxPath;
  readonly label?: string | undefined; // where no visible label names it
  readonly describedBy?: string | undefined;
  readonly row?: number | undefined;
  readonly list?: string | undefined;
}

/** A box with what is typed in it, and whether it is in trouble. Its placeholder shows nothing: styles ask by it whether the box is empty. */
export function inputOf(
  { path, label, describedBy, row, list }: CellProps,
  sheet: Pick<SheetView, 'shown' | 'run'>,
  text: string,
  refusal: string | undefined,
  doubt: string | undefined,
): JSX.Element {
  const field = fieldAt(path);
  const trouble = (refusal ?? doubt) && `${idOf(path)}-trouble`;
  return (
    <input
      id={idOf(path)}
      class="box"
      type="text"
      list={list}
      autocomplete="off"
      autocapitalize={list === undefined ? undefined : 'off'}
      spellcheck={false}
      maxLength={mostLetters(field)}
      inputMode={keypad(field, sheet.shown().system === 'us')}
      value={text}
      aria-label={label}
      aria-invalid={refusal ? 'true' : undefined}
      aria-describedby={[describedBy, trouble].filter(Boolean).join(' ') || undefined}
      data-path={path}
      data-row={row}
      data-own-unit={('kind' in field && text && !isBare(text)) || undefined}
      placeholder=" "
      enterKeyHint="next"
      onInput={(event) => sheet.run({ do: 'type', path, text: event.currentTarget.value })}
    />
  );
}

/** The box itself. */
export const BoxInput = part<CellProps>((props, sheet) =>
  inputOf(props, sheet, sheet.text(props.path), sheet.refusal(props.path), sheet.doubt(props.path)),
);

const LateMeant = late(() => import('../insides/Meant.tsx'), 'Meant');

interface TroubleProps {
  readonly path: BoxPath;
  readonly refusal: string | undefined;
  readonly doubt: string | undefined;
}

/** What is wrong or odd about a box. */
export function Trouble({ path, refusal, doubt }: TroubleProps): JSX.Element | null {
  if (!refusal && !doubt) return null;
  return (
    <p class={refusal ? 'refusal' : 'refusal doubt'} id={`${idOf(path)}-trouble`}>
      {refusal ?? doubt}
      <LateMeant path={path} />
    </p>
  );
}

/** The same, beside its box, with what the box did not take. */
export const BoxTrouble = part<{ readonly path: BoxPath }>(({ path }, sheet) => (
  <>
    <Trouble path={path} refusal={sheet.refusal(path)} doubt={sheet.doubt(path)} />
    <NotTaken path={path} />
  </>
));

/** A labelled box on its own line. */
export function Box({ path }: { readonly path: BoxPath }): JSX.Element {
  const field = fieldAt(path);
  const { label, of, hint } = field;
  const whenEmpty = 'whenEmpty' in field ? field.whenEmpty : undefined;
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
        {'kind' in field && (
          <span class="unit">
            <Unit kind={field.kind} />
          </span>
        )}
      </div>
      {hasHint && (
        <p class="hint" id={`${idOf(path)}-hint`}>
          {hint}
          {whenEmpty !== undefined && 'kind' in field && (
            <>
              {hint && ' '}Left empty: <Both metric={whenEmpty} kind={field.kind} />.
            </>
          )}
        </p>
      )}
      <BoxTrouble path={path} />
    </div>
  );
}
