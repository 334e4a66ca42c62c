/** One result of the sheet: its name, the formula, and either its number with the arithmetic or what it waits for. */
import type { ComponentChildren, JSX } from 'preact';
import type { Outcome, Ready } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import type { SheetView } from '../state/view.ts';
import { refusalSentence } from '../words/refusal-words.ts';
import { waitingFor } from '../words/waiting-words.ts';
import { part } from './part.tsx';

/** What is written once a result is there. */
export interface Written {
  /** Words before a number that is not to be relied on yet: it is then no larger than they are. */
  readonly provisional?: string | undefined;
  readonly value: ComponentChildren;
  readonly beside?: ComponentChildren; // its interval, in smaller type
  readonly arithmetic: ComponentChildren;
  readonly notes?: readonly string[];
}

interface Props<Value> {
  readonly id: string;
  readonly name: ComponentChildren;
  readonly formula: ComponentChildren;
  readonly outcome: Outcome<Value> | undefined;
  readonly write: (value: Ready<Value>, shown: Shown) => Written;
  readonly felt?: boolean; // in steel ink; otherwise plain
  readonly onWorking?: (isOpen: boolean) => void;
}

/** What the hand sets. */
export function Hand({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return <span class="hand">{children}</span>;
}

/** What the band feels. */
export function Steel({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return <span class="steel">{children}</span>;
}

function Value({ provisional, value, beside }: Written, felt: boolean): JSX.Element {
  const look = `result-value${felt ? ' steel' : ''}${provisional ? ' is-provisional' : ''}`;
  return (
    <p class={look}>
      {provisional && <span>{provisional}</span>}
      <span class="result-number">{value}</span>
      {beside && <span class="result-beside"> {beside}</span>}
    </p>
  );
}

function drawResult(props: Props<unknown>, sheet: SheetView): JSX.Element {
  const { id, name, formula, outcome, write, felt = true, onWorking } = props;
  const state = outcome === undefined ? 'blank' : outcome.ready ? 'there' : 'waiting';
  const written = outcome?.ready ? write(outcome, sheet.shown()) : undefined;
  return (
    <div class={`result is-${state}`} data-result={id}>
      <h3 class="result-name">{name}</h3>
      {written && Value(written, felt)}
      {state === 'blank' && <p class="result-blank" aria-hidden="true" />}
      {outcome && !outcome.ready && (
        <p class={outcome.refusal ? 'result-waits is-refused' : 'result-waits'}>
          {outcome.refusal
            ? refusalSentence(outcome.refusal, sheet.shown())
            : waitingFor(outcome.waitsFor, sheet.troubles().refusals, sheet.shown().row)}
        </p>
      )}
      <details
        class="working"
        open={state === 'blank'}
        onToggle={({ currentTarget }) => onWorking?.(currentTarget.open)}
      >
        <summary>Show the working</summary>
        <p class="arithmetic">
          <span class="formula">{formula}</span>
          {written && <span class="filled"> = {written.arithmetic}</span>}
        </p>
        {written?.notes?.map((note) => (
          <p class="result-note" key={note}>
            {note}
          </p>
        ))}
      </details>
    </div>
  );
}

/** The result, in one of its three states: blank (as built), waiting, there. */
export const Result = part(drawResult) as <Value>(props: Props<Value>) => JSX.Element;

/** Results that few people ask for, folded away. */
export function MoreResults({
  name,
  children,
}: {
  readonly name: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <details class="more-results">
      <summary>{name}</summary>
      <div>{children}</div>
    </details>
  );
}
