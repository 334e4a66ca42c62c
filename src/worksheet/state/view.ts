/**
 * What every part of the sheet sees and may do. There is one sheet on a page and it is drawn in one go, so the view
 * is set once before each drawing instead of being handed through every part (a context would cost 1.5 kB more).
 */

import type { StressTrials, Worksheet, WorksheetResults } from '../../core/worksheet.ts';
import type { ChoiceName, ReadingText, WorksheetText } from '../../form/text.ts';
import { blankText } from '../../form/text.ts';
import { type Shown, shownIn } from './shown.ts';

/** The sheet at one moment; `worksheet` and `results` are undefined in the page as it is built. */
export interface SheetView {
  readonly text: WorksheetText;
  readonly shown: Shown;
  readonly worksheet: Worksheet | undefined;
  readonly results: WorksheetResults | undefined;
  /** Interval by trials, once the worker has it for just this sheet. */
  readonly trials: StressTrials | undefined;
  /** Sentence beside a box that cannot be used, and one beside a box that is odd. */
  readonly refusals: Readonly<Record<string, string>>;
  readonly doubts: Readonly<Record<string, string>>;
  readonly type: (path: string, typed: string) => void;
  readonly choose: (name: ChoiceName, chosen: string) => void;
  readonly paste: (
    place: number,
    column: keyof ReadingText,
    cells: readonly (readonly string[])[],
  ) => void;
}

const nothing = () => {};

/** The sheet as it is built and printed blank. */
export const blankView: SheetView = {
  text: blankText,
  shown: shownIn('metric'),
  worksheet: undefined,
  results: undefined,
  trials: undefined,
  refusals: {},
  doubts: {},
  type: nothing,
  choose: nothing,
  paste: nothing,
};

let current = blankView;

/** The view that the sheet is being drawn from. */
export function sheetView(): SheetView {
  return current;
}

/** Sets the view for the drawing that follows. */
export function setSheetView(view: SheetView): void {
  current = view;
}
