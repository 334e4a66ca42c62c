/** Other bands for the same mill: a list of folds, one for each, and one more to fill in, open while it is the only one. */
import type { JSX } from 'preact';
import { mostRows } from '../../form/paths.ts';
import { Box } from '../kit/Box.tsx';
import { part } from '../kit/part.tsx';
import { WordsBox } from '../kit/WordsBox.tsx';

const PATH = 'bands';

/** What the fold of a new band is called: what opening it does, and once it is open what its boxes are for. */
const NewBand = () => (
  <>
    <span class="while-shut">Add a band</span>
    <span class="while-open">Another band</span>
  </>
);

const BandBoxes = part<{ readonly place: number }>(({ place }, sheet) => {
  const [name, isNew] = [sheet.text(`bands.${place}.name`), place >= sheet.rows(PATH)];
  return (
    <details class={isNew ? 'seldom no-print' : 'seldom'} open={!isNew || place === 0}>
      <summary>{isNew ? <NewBand /> : name || `Other band ${place + 1}`}</summary>
      <WordsBox path={`bands.${place}.name`} label="Its name" />
      <Box path={`bands.${place}.bodyWidth`} />
      <Box path={`bands.${place}.thickness`} />
      <Box path={`bands.${place}.targetStress`} />
      {!isNew && (
        <button
          class="button plain"
          type="button"
          onClick={() => sheet.run({ do: 'removeRow', path: PATH, row: place })}
        >
          Remove {name || `other band ${place + 1}`}
        </button>
      )}
    </details>
  );
});

const Folds = part((_, sheet) => {
  const count = Math.min(sheet.rows(PATH) + 1, mostRows(PATH));
  return Array.from({ length: count }, (_, place) => <BandBoxes place={place} key={place} />);
});

/** The list. */
export function BandsList(): JSX.Element {
  return (
    <div class="bands">
      <h3>Other bands for this mill</h3>
      <p class="hint">Each with its sizes; “Undo” brings a removed one back.</p>
      <Folds />
    </div>
  );
}
