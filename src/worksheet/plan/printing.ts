/** Prints the sheet to take along: it is drawn for as long as it prints, before everything else on the page. */
import { h, render } from 'preact';
import { printOnly } from '../folds/printing.ts';
import { SheetGiven } from '../kit/part.tsx';
import type { SheetView } from '../state/view.ts';
import { Along } from './Along.tsx';

/** Draws the sheet and opens the browser's print dialogue for it alone. */
export function printPlan(page: Document, sheet: SheetView): void {
  const place = page.createElement('div');
  place.className = 'plan-place';
  page.querySelector('.worksheet')?.prepend(place);
  render(h(SheetGiven, { value: sheet }, h(Along, {})), place);
  const takeDown = () => {
    render(null, place);
    place.remove();
  };
  addEventListener('afterprint', takeDown, { once: true });
  printOnly(page, 'plan');
}
