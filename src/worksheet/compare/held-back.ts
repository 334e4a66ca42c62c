/** Whether theory and measurement of a sheet disagree, and what holds its settings back. */
import { type HeldBack, heldBack, isApart } from '../../core/worksheet.ts';
import type { SheetView } from '../state/view.ts';

/** True only where both are there. */
export const areApart = ({ result }: Pick<SheetView, 'result'>): boolean =>
  isApart({ agreement: result('agreement') });

/** What holds back a setting: that of the other band at a place, else the first one's. */
export const heldOn = (
  { result }: Pick<SheetView, 'result'>,
  asked: Parameters<typeof heldBack>[1],
): HeldBack | undefined =>
  heldBack(
    { agreement: result('agreement'), verdict: result('verdict'), guards: result('guards') },
    asked,
  );
