/** Whole turns of the dial's hand that lack in the column for them, what is said of them, and the command that writes them. */
import { type CountedTurns, countedTurns, passesWithoutTravel } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import type { SheetView } from '../state/view.ts';
import { fillColumn } from './columns.ts';

/** The rows that lack turns; none while nothing is known of the sheet. */
export function turnsLacking({ worksheet }: Pick<SheetView, 'worksheet'>): readonly CountedTurns[] {
  const known = worksheet();
  return known ? countedTurns(known) : [];
}

/** The rows just before which the hand may have passed zero, while the travel of one turn is not known. */
export function passesUntold({ worksheet }: Pick<SheetView, 'worksheet'>): readonly number[] {
  const known = worksheet();
  return known ? passesWithoutTravel(known) : [];
}

const listed = (names: readonly string[]): string =>
  [names.slice(0, -1).join(', '), names.at(-1)].filter(Boolean).join(' and ');

/** Where the hand passed zero; where all of that is written, what else is to be. */
export function turnsSaid(lacking: readonly CountedTurns[], { row, load }: Shown): string {
  const passed = lacking.filter(({ passes }) => passes).map((each) => row(each.row));
  return passed.length > 0
    ? `The hand seems to have passed zero just before ${listed(passed)}: the ${load.name} rose, but the dial jumped the wrong way by more than half a turn.`
    : 'A turn of the hand counts in all rows after it passed zero, not only in the first.';
}

/** Where the hand may have passed zero, which the travel of one turn would settle. */
export const passesSaid = (passes: readonly number[], { row, load }: Shown): string =>
  `The hand may have passed zero just before ${listed(passes.map(row))}: the ${load.name} rose, but the dial jumped the wrong way.`;

/** The button that writes the turns. */
export const turnsButton = (lacking: readonly CountedTurns[], { row }: Shown): string =>
  `Fill in the turns in ${lacking.length === 1 ? row(lacking[0]?.row ?? 0) : `${lacking.length} rows`}`;

/** Writes the turns, in one step that can be undone. */
export function writeTurns(sheet: Pick<SheetView, 'run'>, lacking: readonly CountedTurns[]): void {
  const turns = lacking.map((each) => [each.row, `${each.turns}`] as const);
  fillColumn(sheet, 'wholeTurns', turns);
}
