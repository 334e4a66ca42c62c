/**
 * The key to a set of sheets, question by question: each sheet's answer beside what the usual slips make of its numbers,
 * what the slips are, and each sheet worked out.
 */
import type { JSX } from 'preact';
import { CLOSE_ENOUGH } from '../../models/problem.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { DrawnQuestion, DrawnSheet } from './drawn.ts';

const letterOf = (place: number): string => String.fromCharCode('a'.charCodeAt(0) + place);

interface Props {
  readonly sheets: readonly DrawnSheet[];
}

/** The same question on each of the sheets. */
type OnSheets = readonly (DrawnQuestion & { readonly seed: number })[];

const questionAt = (sheets: readonly DrawnSheet[], place: number): OnSheets =>
  sheets.flatMap(({ seed, questions }) => {
    const question = questions[place];
    return question ? [{ ...question, seed }] : [];
  });

function Numbers({ first, all }: { first: DrawnQuestion; all: OnSheets }): JSX.Element {
  return (
    <div class="key-numbers">
      <table>
        <thead>
          <tr>
            <th scope="col">Sheet</th>
            <th scope="col">Answer{first.unit && `, ${first.unit}`}</th>
            {first.slips.map(({ says }, place) => (
              <th key={says} scope="col">
                <span class="visually-hidden">slip </span>
                {letterOf(place)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {all.map(({ seed, answer, slips }) => (
            <tr key={seed}>
              <th scope="row">{seed}</th>
              <td class="key-answer">{answer}</td>
              {slips.map((slip) => (
                <td key={slip.says}>{slip.answer}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Question({ all, place }: { all: OnSheets; place: number }): JSX.Element | null {
  const [first] = all;
  if (!first) return null;
  return (
    <section key={first.id} class="key-question">
      <h3>
        Question {place + 1} <span class="label">{first.lesson}</span>
      </h3>
      <Numbers first={first} all={all} />
      <ul class="slips" aria-label="Usual slips">
        {first.slips.map(({ says }, at) => (
          <li key={says}>
            <span class="slip-letter">{letterOf(at)}</span> {says}
          </li>
        ))}
      </ul>
      <ul class="key-steps" aria-label="Worked out">
        {all.map(({ seed, because }) => (
          <li key={seed}>
            <span class="slip-letter">{seed}</span> {because}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The key, on pages of its own. */
export function Key({ sheets }: Props): JSX.Element {
  const questions = sheets[0]?.questions ?? [];
  const [from, to] = [sheets[0]?.seed, sheets.at(-1)?.seed];
  return (
    <section class="answer-key">
      <h2>{from === to ? `Key to sheet ${from}` : `Key to sheets ${from} to ${to}`}</h2>
      <p class="small">
        An answer is right within {formatQuantity(CLOSE_ENOUGH, 'percent', 'metric')}: rounding is
        no slip. The letters are the usual slips, each with the number that it leads to.
      </p>
      {questions.map(({ id }, place) => (
        <Question key={id} all={questionAt(sheets, place)} place={place} />
      ))}
    </section>
  );
}
