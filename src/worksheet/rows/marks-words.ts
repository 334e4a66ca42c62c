/** What is asked where dial readings look like counted marks. */
import { unitLabel } from '../../units/label.ts';
import type { Shown } from '../state/shown.ts';
import type { Mark } from './marks.ts';

/** The question. */
export const marksQuestion = (graduation: number, { plain, system }: Shown): string => {
  const unit = unitLabel('stretch', system);
  return `Are these marks or ${unit}? All are whole numbers, and a mark of your dial is ${plain(graduation, 'stretch')}.`;
};

/** The button that takes them as marks. */
export const marksButton = ({ count, length }: Mark, { system }: Shown): string =>
  `They are marks: write ${length} ${unitLabel('stretch', system)} for ${count}`;

/** The question where they look like thousandths. */
export const THOUSANDTHS_QUESTION =
  'Are these thousandths of an inch? As inches they are more than a dial shows.';

/** The button that takes them as thousandths. */
export const thousandthsButton = (text: string, count: number): string =>
  count === 1 ? `Yes: write ${text}` : `Yes: write ${text}, and so on for all ${count}`;

/** What comes before any other advice. */
export const MARKS_FIRST = 'First say at the readings whether the dial was read in marks.';
