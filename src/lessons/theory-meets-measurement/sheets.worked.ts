/**
 * The four sheets under the four reasons as plain data, worked out at build.
 * Units: SI.
 * Source: sheets.ts beside it.
 */
import { everySheet } from './sheets.ts';

/** `sheets[sheet][reason]`. */
export const sheets = everySheet();
