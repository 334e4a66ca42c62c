/** The whole sheet, drawn at build as a blank form and in the browser as what was typed makes it. */
import type { JSX } from 'preact';
import { BoxInput, BoxTrouble } from '../kit/Box.tsx';
import { ComparePart } from './BudgetPart.tsx';
import { LogPart } from './LogPart.tsx';
import { MillPart } from './MillPart.tsx';
import { ReadingsPart } from './ReadingsPart.tsx';
import { RigPart } from './RigPart.tsx';
import { SetAside } from './SetAside.tsx';
import { SettingPart } from './SettingPart.tsx';
import { StartPart } from './StartPart.tsx';
import { TensionerPart } from './TensionerPart.tsx';
import { WaysPart } from './WaysPart.tsx';

function Label(): JSX.Element {
  return (
    <div class="sheet-label">
      <label for="box-label">Name</label>
      <BoxInput path="label" />
      <BoxTrouble path="label" />
    </div>
  );
}

/** The parts in their order. */
export function Sheet(): JSX.Element {
  return (
    <>
      <SetAside />
      <Label />
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
