/** What the answers say, and the questions they answer. */
import type { AgreementResult } from '../../core/worksheet.ts';
import type { Route, Span } from '../state/carried.ts';
import type { Shown } from '../state/shown.ts';

/** Each route to the stress in few words. */
export const routeWords = (route: Route, { load }: Shown): string =>
  ({
    predicted: `The ${load.by} predicts`,
    measured: 'You measured',
    both: 'Both together',
  })[route];

/** Why there is no bar for both together. */
export const WIDER = 'The two do not agree, so they are not joined: the bar is what you measured.';

/** Whether theory and measurement agree, in few words. */
export const AGREES: Readonly<Record<AgreementResult['verdict'], string>> = {
  agree: 'They agree',
  measuredHigher: 'No: you measured more',
  measuredLower: 'No: you measured less',
};

const WIDE = 1.5; // times from one end to the other

/** Whether a prediction is so wide that agreement with it tests little. */
export const isWide = ({ low, high }: Pick<Span, 'low' | 'high'>): boolean => high > WIDE * low;

/** The questions in their order. */
export const QUESTION = {
  stress: 'What does the band carry?',
  setting: 'What to set for the target?',
  bands: 'And with another band?',
  agreement: 'Do theory and measurement agree?',
} as const;
