/** The key to a set of sheets: all answers in one table, then each sheet worked out, with what the usual slips give. */
import type { JSX } from 'preact';
import { CLOSE_ENOUGH } from '../../models/problem.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { DrawnQuestion, DrawnSheet } from './drawn.ts';

function Glance({ sheets }: Props): JSX.Element {
  const [first] = sheets;
  return (
    <table class="glance">
      <caption>All answers</caption>
      <thead>
        <tr>
          <th scope="col">Sheet</th>
          {first?.questions.map(({ id }, place) => (
            <th key={id} scope="col">
              {place + 1}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {sheets.map(({ seed, questions }) => (
          <tr key={seed}>
            <th scope="row">{seed}</th>
            {questions.map(({ id, answer }) => (
              <td key={id}>{answer}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Worked({ id, lesson, answer, because, slips }: DrawnQuestion): JSX.Element {
  return (
    <li key={id}>
      <p>
        <span class="key-answer">{answer}</span> <span class="label">{lesson}</span>
      </p>
      <p>{because}</p>
      <ul class="slips" aria-label="Usual slips">
        {slips.map(({ says, answer: wrong }) => (
          <li key={says}>
            <span class="wrong">{wrong}</span> {says}
          </li>
        ))}
      </ul>
    </li>
  );
}

interface Props {
  readonly sheets: readonly DrawnSheet[];
}

/** The key, on pages of its own. */
export function Key({ sheets }: Props): JSX.Element {
  return (
    <section class="answer-key">
      <h2>Answer key</h2>
      <p class="small">
        An answer is right within {formatQuantity(CLOSE_ENOUGH, 'percent', 'metric')}: rounding is
        no slip. Each wrong number below comes from one usual slip.
      </p>
      {sheets.length > 1 && <Glance sheets={sheets} />}
      {sheets.map(({ seed, questions }) => (
        <section key={seed} class="key-sheet">
          <h3>Key to sheet {seed}</h3>
          <ol>{questions.map((question) => Worked(question))}</ol>
        </section>
      ))}
    </section>
  );
}
