/** Beside a measurement that is no use: the one thing to do about it, which is the turns of the hand where those lack. */
import type { JSX } from 'preact';
import { GuardList } from '../kit/Guards.tsx';
import { PartLink } from '../kit/PartLink.tsx';
import { part } from '../kit/part.tsx';
import type { SheetView } from '../state/view.ts';
import { refusalSentence } from '../words/refusal-words.ts';
import { passesUntold, turnsLacking } from './hand-turns.ts';

/** The way to what lacks of the turns; from another part to the part of the readings, which opens. */
function turnsLead(sheet: SheetView, to: 'readings' | 'turns-asked'): JSX.Element | null {
  if (turnsLacking(sheet).length > 0)
    return (
      <>
        <a href={`#${to}`}>Fill in the turns of the hand first</a>: it seems to have passed zero.
      </>
    );
  if (passesUntold(sheet).length === 0) return null;
  return (
    <>
      <PartLink to="rig">Enter the travel in one turn of the hand first</PartLink>: the hand may
      have passed zero.
    </>
  );
}

const Led = ({ children }: { readonly children: JSX.Element | string }) => (
  <div class="guards">
    <p class="guard is-warn">{children}</p>
  </div>
);

/** Within the readings, where why they are no use is said below. */
export const TurnsLead = part((_, sheet) => {
  const lead = turnsLead(sheet, 'turns-asked');
  return lead ? <Led>{lead}</Led> : null;
});

/** Above the answers, in their stead: turns that lack, a turn that was missed, or why the readings are refused. */
export const NoStressLead = part((_, sheet) => {
  const lead = turnsLead(sheet, 'readings');
  if (lead) return <Led>{lead}</Led>;
  const missed = (sheet.result('guards') ?? []).filter(({ code }) => code === 'missedDialTurn');
  if (missed.length > 0) return <GuardList guards={missed} />;
  const measured = sheet.result('measured');
  const refusal = measured?.ready === false ? measured.refusal : undefined;
  return refusal ? <Led>{refusalSentence(refusal, sheet.shown())}</Led> : null;
});
