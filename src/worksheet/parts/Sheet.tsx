/** The whole sheet, drawn at build as a blank form and in the browser as what was typed makes it. */
import type { JSX } from 'preact';
import { setAllOpen } from '../folds/open-parts.ts';
import { PART_IDS } from '../folds/sheet-parts.ts';
import { BoxInput, BoxTrouble } from '../kit/Box.tsx';
import { late } from '../kit/late.tsx';
import { part } from '../kit/part.tsx';
import { ComparePart } from './ComparePart.tsx';
import { LogPart } from './LogPart.tsx';
import { MillPart } from './MillPart.tsx';
import { ReadingsPart } from './ReadingsPart.tsx';
import { RigPart } from './RigPart.tsx';
import { SettingPart } from './SettingPart.tsx';
import { StartPart } from './StartPart.tsx';
import { TensionerPart } from './TensionerPart.tsx';
import { WaysPart } from './WaysPart.tsx';

const LateSetAside = late(() => import('./SetAside.tsx'), 'SetAside');

/** What could not be read, if anything. */
const Aside = part((_, sheet) => (sheet.aside() ? <LateSetAside /> : null));

function Label(): JSX.Element {
  return (
    <div class="sheet-label">
      <label for="box-label">Name</label>
      <BoxInput path="label" />
      <BoxTrouble path="label" />
    </div>
  );
}

/** Who comes back may want to see everything; who is led sees one part at a time. */
const AllParts = part((_, sheet) => {
  const areOpen = PART_IDS.every((id) => id === 'card' || sheet.openParts.value.has(id));
  return (
    <p class="all-parts needs-script no-print">
      <button
        class="button plain"
        type="button"
        onClick={() => setAllOpen(sheet.openParts, !areOpen)}
      >
        {areOpen ? 'Close all parts' : 'Open all parts'}
      </button>
    </p>
  );
});

/** The parts in their order. */
export function Sheet(): JSX.Element {
  return (
    <>
      <Aside />
      <Label />
      <AllParts />
      <StartPart />
      <TensionerPart />
      <MillPart />
      <RigPart />
      <ReadingsPart />
      <ComparePart />
      <WaysPart />
      <SettingPart />
      <LogPart />
    </>
  );
}
