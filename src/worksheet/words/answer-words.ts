/** What the answers say, and the questions they answer. */
import type { AgreementResult } from '../../core/worksheet.ts';
import { topReading, torqueInUse } from '../state/carried.ts';
import type { SheetView } from '../state/view.ts';
import { measuredUpTo } from './setting-words.ts';

/** A torque, N·m, that a stress belongs to, and which of the reader’s it is: the highest reading, the one in use. */
export function torqueSaid(
  torque: number,
  sheet: Pick<SheetView, 'result' | 'shown' | 'worksheet'>,
): string {
  const [top, { quantity, load }] = [topReading(sheet), sheet.shown()];
  const isUsed = torque === torqueInUse(sheet);
  const whose = isUsed
    ? `, the ${load.name} you use now${top !== undefined && torque > top ? measuredUpTo(top, sheet.shown()) : ''}`
    : torque === top
      ? ', your highest reading'
      : '';
  return `${quantity(torque, load.name)}${whose}`;
}

/** Whether theory and measurement agree, in few words. */
export const AGREES: Readonly<Record<AgreementResult['verdict'], string>> = {
  agree: 'They agree',
  measuredHigher: 'No: you measured more',
  measuredLower: 'No: you measured less',
};

/** What is said beside an agreement that tests little. */
export const TESTS_LITTLE = 'but the prediction is so wide that this tests little';

/** Instead of an answer where the readings are no use; why is said over all of them. */
export const NO_STRESS = 'Not yet: see above.';

/** The questions in their order. */
export const QUESTION = {
  stress: 'What does the band carry?',
  setting: 'What to set for the target?',
  bands: 'And with another band?',
  agreement: 'Do theory and measurement agree?',
} as const;
