/** What a teacher chooses: lessons, how many questions and sheets, which numbers, which units, what goes to paper. */
import type { JSX } from 'preact';
import { CopyButton } from '../../worksheet/kit/CopyButton.tsx';
import { Radios } from '../kit/Radios.tsx';
import { WholeBox } from '../kit/WholeBox.tsx';
import type { SheetChoices } from './choices.ts';
import type { LessonQuestions } from './drawn.ts';
import { type NumberName, type SheetState, tickLesson } from './state.ts';

const LABELS: Readonly<Record<NumberName, string>> = {
  questions: 'Questions on a sheet',
  variants: 'Sheets, each with other numbers',
  seed: 'Number of the first sheet',
};
const UNITS = { metric: 'mm, N, MPa', us: 'in, lbf, psi' } as const;
const PER_PAGE = { '1': 'one to a page', '2': 'two to a page' } as const;
const PRINT = { all: 'sheets, then key', sheets: 'sheets alone', key: 'key alone' } as const;

/** What the controls are drawn from. */
export interface ControlsView {
  readonly state: SheetState;
  readonly lessons: readonly LessonQuestions[];
  /** The address of the page as it is chosen. */
  readonly address: string;
  readonly otherNumbers: () => void;
  readonly print: () => void;
}

function Lessons({ state, lessons }: ControlsView): JSX.Element {
  const { lessons: ticked } = state.rest.value;
  return (
    <fieldset class="ticks">
      <legend>Lessons</legend>
      {lessons.map(({ slug, order, title }) => (
        <label key={slug}>
          <input
            type="checkbox"
            checked={ticked.includes(slug)}
            onChange={({ currentTarget }) => tickLesson(state, slug, currentTarget.checked)}
          />
          <span>
            {order}. {title}
          </span>
        </label>
      ))}
      {ticked.length === 0 && <p class="refusal">No lesson is ticked. Tick at least one.</p>}
    </fieldset>
  );
}

function Numbers({ state, otherNumbers }: ControlsView): JSX.Element {
  const box = (name: NumberName, behind?: JSX.Element) => (
    <WholeBox
      id={`sheets-${name}`}
      label={LABELS[name]}
      text={state.texts.value[name]}
      read={state.read.value[name]}
      type={(text) => {
        state.texts.value = { ...state.texts.value, [name]: text };
      }}
    >
      {behind}
    </WholeBox>
  );
  return (
    <div class="numbers">
      {box('questions')}
      {box('variants')}
      {box(
        'seed',
        <button class="button plain" type="button" onClick={otherNumbers}>
          Other numbers
        </button>,
      )}
    </div>
  );
}

function Paper({ state }: ControlsView): JSX.Element {
  const { units, perPage, print } = state.rest.value;
  const set = (change: Partial<SheetChoices>) => {
    state.rest.value = { ...state.rest.value, ...change };
  };
  return (
    <div class="paper-choices">
      <Radios
        name="sheet-units"
        legend="Units"
        options={UNITS}
        chosen={units}
        choose={(option) => set({ units: option })}
      />
      <Radios
        name="sheet-per-page"
        legend="Sheets"
        options={PER_PAGE}
        chosen={perPage}
        choose={(option) => set({ perPage: option })}
      />
      <Radios
        name="sheet-print"
        legend="Show and print"
        options={PRINT}
        chosen={print}
        choose={(option) => set({ print: option })}
      />
    </div>
  );
}

/** The whole form. */
export function Controls(view: ControlsView): JSX.Element {
  const { refused, choices } = view.state;
  return (
    <form class="sheet-controls" onSubmit={(event) => event.preventDefault()}>
      <p class="refusal" role="status" hidden={refused.value.length === 0}>
        {refused.value.length > 0 &&
          `Part of the link could not be used and was left out: ${refused.value.join(', ').slice(0, 200)}.`}
      </p>
      <Lessons {...view} />
      <Numbers {...view} />
      <Paper {...view} />
      <p class="sheet-actions">
        <button class="button" type="button" disabled={!choices.value} onClick={view.print}>
          Print
        </button>
        <CopyButton label="Copy the link to these sheets" text={view.address} />
      </p>
    </form>
  );
}
