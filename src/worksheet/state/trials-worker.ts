/** The interval of the stress by trials, away from the page's own thread: it takes up to seconds. */

import type { Worksheet } from '../../core/worksheet.ts';
import { trialsOfStress } from '../../core/worksheet.ts';

/** What is asked; `ticket` tells which answer belongs to which sheet. */
export interface TrialsRequest {
  readonly ticket: number;
  readonly worksheet: Worksheet;
}

addEventListener('message', ({ data }: MessageEvent<TrialsRequest>) => {
  const { ticket, worksheet } = data;
  postMessage({ ticket, trials: trialsOfStress(worksheet) });
});
