/** Whether theory and measurement of a sheet disagree. */
import { isApart } from '../../core/worksheet.ts';
import type { SheetView } from '../state/view.ts';

/** True only where both are there. */
export const areApart = ({ result }: Pick<SheetView, 'result'>): boolean =>
  isApart({ agreement: result('agreement') });
