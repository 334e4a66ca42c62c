/** What the card says beside the numbers: which band was measured, when, with what grease and wrench, or what gauge. */
import type { JSX } from 'preact';
import { part } from '../kit/part.tsx';
import { WordsBox } from '../kit/WordsBox.tsx';
import { dateText } from '../words/kept-words.ts';

const Today = part((_, sheet) => (
  <button
    class="button plain"
    type="button"
    onClick={() => sheet.run({ do: 'type', path: 'measuredOn', text: dateText(Date.now()) })}
  >
    Today
  </button>
));

const How = part((_, sheet) =>
  sheet.shown().load.name === 'torque' ? (
    <>
      <WordsBox path="grease" />
      <WordsBox path="wrench" />
    </>
  ) : (
    <WordsBox path="gauge" />
  ),
);

/** Boxes of words. */
export function CardBoxes(): JSX.Element {
  return (
    <div class="card-boxes">
      <h3>For the card</h3>
      <WordsBox path="bandName" />
      <div class="with-button">
        <WordsBox path="measuredOn" />
        <Today />
      </div>
      <How />
    </div>
  );
}
