/** What a sheet that is filled in comes to: nothing on it may still be waited for. */
import type { Outcome } from '../../core/worksheet.ts';

/** The numbers of a result. @throws RangeError while it waits */
export function there<Value>(outcome: Outcome<Value>): Value {
  if (!outcome.ready) throw new RangeError(`result must be there (waits: ${outcome.waitsFor})`);
  return outcome;
}
