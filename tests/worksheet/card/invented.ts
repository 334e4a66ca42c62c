/** An invented mill as the card's tests set it, and what the card says of it. */
import type { Worksheet } from '../../../src/core/worksheet.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { millA } from '../../core/worksheet/fixtures/mills.ts';

export const shown = shownIn('metric');
export const plain = (text: string | undefined) => text?.replace(/[\u00a0\u202f]/g, ' ');

export const aiming = (stress: number, more: Partial<Worksheet['target']> = {}): Worksheet => ({
  ...millA,
  target: { ...millA.target, ...more, stress },
});

export const unread: Worksheet = { ...millA, readings: [] };
