/**
 * Reading what is typed takes the names of all units: they come with the reader's first touch, not with the page.
 */
import type { parseQuantity } from '../units/reading/parse-quantity.ts';

/** Reads a typed quantity of a kind in a unit system. */
export type Parse = typeof parseQuantity;

/** What is said where a part of the page did not come. */
export const NOT_ARRIVED =
  'A part of this page did not arrive, so this cannot be read. Load the page again.';

let parse: Parse | undefined;

/** Fetches what reads a typed quantity. @throws where it does not arrive */
export async function reading(): Promise<Parse> {
  parse ??= (await import('../units/reading/parse-quantity.ts')).parseQuantity;
  return parse;
}

/** Reads with it at once, or as soon as it is there. */
export function withReading(use: (parse: Parse) => void, failed: () => void): void {
  if (parse) use(parse);
  else reading().then(use, failed);
}

/** Fetches it with the first touch or step of the keyboard on the page. */
export function readFromFirstTouch(page: Document): void {
  const fetchIt = () => reading().catch(() => {}); // asked again, and told, where something is typed
  for (const touch of ['pointerdown', 'focusin'])
    page.addEventListener(touch, fetchIt, { once: true });
}
