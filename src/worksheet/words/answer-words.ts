/** What the answers say, and the questions they answer. */
import type { AgreementResult, WorksheetResults } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';

/** A torque that a stress belongs to, and which of the reader’s it is. */
export function torqueSaid(
  torque: number,
  measured: WorksheetResults['measured'] | undefined,
  { quantity, load }: Shown,
): string {
  const isTop = measured?.ready && measured.topTorque === torque;
  return `${quantity(torque, load.name)}, ${isTop ? 'your highest reading' : 'which you use now'}`;
}

/** Whether theory and measurement agree, in few words. */
export const AGREES: Readonly<Record<AgreementResult['verdict'], string>> = {
  agree: 'They agree',
  measuredHigher: 'No: you measured more',
  measuredLower: 'No: you measured less',
};

/** What is said beside an agreement that tests little. */
export const TESTS_LITTLE = 'but the prediction is so wide that this tests little';

/** The questions in their order. */
export const QUESTION = {
  stress: 'What does the band carry?',
  setting: 'What to set for the target?',
  bands: 'And with another band?',
  agreement: 'Do theory and measurement agree?',
} as const;
