/** What a sheet with nothing on it comes to: which boxes each result waits for. Worked out when the site is built. */
import { evaluateWorksheet } from '../../core/worksheet.ts';
import { sheetReader } from '../../form/reading.ts';

/** The results of the blank sheet. */
export const BLANK_RESULTS = evaluateWorksheet(sheetReader()({}, 'metric').worksheet);
