/** The sheets as they are handed out: name, questions, room to work, a line for each answer. */
import type { JSX } from 'preact';
import type { DrawnQuestion, DrawnSheet } from './drawn.ts';

function Question({ id, ask }: DrawnQuestion): JSX.Element {
  return (
    <li key={id} class="question">
      <p>{ask}</p>
      <div class="work" />
      <p class="answer-line">Answer</p>
    </li>
  );
}

interface SheetProps {
  readonly sheet: DrawnSheet;
}

function Sheet({ sheet }: SheetProps): JSX.Element {
  return (
    <section class="problem-sheet">
      <header>
        <h2>Problem sheet {sheet.seed}</h2>
        <p class="name-line">Name</p>
      </header>
      <ol>{sheet.questions.map((question) => Question(question))}</ol>
      <p class="sheet-caution">
        CAUTION: Power off and locked out before hands come near a band. Makers’ limits, local rules
        and a qualified person come before any number here.
      </p>
    </section>
  );
}

interface Props {
  readonly sheets: readonly DrawnSheet[];
  readonly perPage: '1' | '2';
}

/** All sheets of a set, each on a page or two to a page. */
export function Sheets({ sheets, perPage }: Props): JSX.Element {
  return (
    <div class={perPage === '2' ? 'problem-sheets two' : 'problem-sheets'}>
      {sheets.map((sheet) => (
        <Sheet key={sheet.seed} sheet={sheet} />
      ))}
    </div>
  );
}
