/** The invented mills that an empty page offers; the build wrote them into the page as data. */
import type { WorksheetDocument } from '../../form/document.ts';

/** The documents in the page; none where the page holds none. */
export function examplesIn(page: Document): readonly WorksheetDocument[] {
  const data = page.getElementById('example-mills')?.textContent ?? '[]';
  return JSON.parse(data) as WorksheetDocument[];
}
