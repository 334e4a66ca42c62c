/** The window of tension, drawn with today's stress and the target in it, and what a check shows over the day. */
import type { JSX } from 'preact';
import type { WindowResult } from '../../core/worksheet.ts';
import { heldOn } from '../compare/held-back.ts';
import { part } from '../kit/part.tsx';
import { Hand, Result, Steel } from '../kit/Result.tsx';
import { routeWords, type SaidSpan, StressBars } from '../results/StressBars.tsx';
import { carriedBy } from '../state/carried.ts';
import type { Shown } from '../state/shown.ts';
import type { SheetView } from '../state/view.ts';
import { notYet } from '../words/setting-words.ts';
import { waitingFor } from '../words/waiting-words.ts';
import {
  allEdges,
  bindingEdges,
  CHECK_CAUTION,
  checkWords,
  targetInWindow,
  windowRange,
} from '../words/window-words.ts';

const BEYOND = 1.25; // how far a window without a high edge is drawn past the rest

/** Today's stress with the interval that stands elsewhere on the page: the prediction's own trials. */
function todayByTrials({ today }: WindowResult, sheet: SheetView): Pick<WindowResult, 'today'> {
  const predicted = carriedBy(sheet).find(({ route }) => route === 'predicted');
  const isThat = predicted && predicted.span.stress === today?.stress;
  return today && isThat ? { today: { ...today, ...predicted.span } } : {};
}

/** Today's stress and the window itself, on one scale. */
function barsOf(
  { low, high, isOpen, today }: WindowResult,
  shown: Shown,
  target = 0,
): readonly SaidSpan[] {
  const from = Math.max(0, low?.stress ?? 0);
  const rest = Math.max(from, target, today?.high ?? 0);
  const to = high?.stress ?? BEYOND * rest;
  const says = low && high ? 'The window:' : 'The window so far:';
  const room = isOpen ? [{ says, span: { low: from, high: to } }] : [];
  return [
    ...room,
    ...(today ? [{ says: `${routeWords(today.route, shown)}, as set today:`, span: today }] : []),
  ];
}

const Drawn = part<{ readonly of: WindowResult }>(({ of }, sheet) => {
  const worksheet = sheet.worksheet();
  if (!worksheet) return null;
  const target = worksheet.target.stress;
  const waits = waitingFor(of.waitsFor, sheet.troubles().refusals, sheet.shown().row);
  return (
    <>
      <StressBars
        bars={barsOf({ ...of, ...todayByTrials(of, sheet) }, sheet.shown(), target)}
        target={target}
      />
      {bindingEdges(of, worksheet.demands, sheet.shown()).map((sentence) => (
        <p class="result-which" key={sentence}>
          {sentence}
        </p>
      ))}
      {of.waitsFor.length > 0 && <p class="result-waits">{waits}</p>}
    </>
  );
});

/** What a check should show over the day. */
export const DayResults = part((_, sheet): JSX.Element => {
  const outcome = sheet.result('day');
  return (
    <>
      <Result
        id="day"
        name={`A check during the day: ${
          sheet.shown().load.name === 'torque'
            ? 'the torque as the handle moves'
            : 'what the gauge shows'
        }`}
        felt={false}
        formula={
          <>
            Δ<Steel>σ</Steel> = −<Hand>E</Hand> · α · ΔT · the part that the frame leaves
          </>
        }
        outcome={outcome}
        write={(day, shown) => {
          const { cold, warm, why } = checkWords(day, shown);
          const setting = sheet.result('setting');
          const held = setting?.ready ? heldOn(sheet, setting) : undefined;
          const change = day.warmLeast.stress - day.cold.stress;
          return {
            provisional: held && notYet(held, shown),
            value: warm,
            beside: cold,
            arithmetic: shown.quantity(change, 'stress'),
            notes: [why],
          };
        }}
      />
      {outcome?.ready && <p class="result-note">{CHECK_CAUTION}</p>}
    </>
  );
});

/** The window, and where the target lies in it. */
export const WindowResults = part((_, sheet): JSX.Element => {
  const outcome = sheet.result('window');
  const target = sheet.worksheet()?.target.stress;
  return (
    <div class="window-shown">
      <Result
        id="window"
        name="How slack and how tight it may be set, cold"
        felt={false}
        formula="from the highest lower edge to the lowest upper edge"
        outcome={outcome}
        write={(found, shown) => ({
          value: targetInWindow(found, target) ?? windowRange(found, shown),
          arithmetic: allEdges(found, shown),
        })}
      />
      {outcome?.ready && <Drawn of={outcome} />}
    </div>
  );
});
