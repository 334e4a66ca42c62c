/**
 * What the card says of grease, wrench and gauge where their boxes of words are empty: what other parts of the sheet
 * asked about them. What nobody was asked is left to the pen.
 * Units: SI in, the reader's out.
 */
import type { Worksheet } from '../../core/worksheet.ts';
import type { Shown } from '../state/shown.ts';
import type { SheetView } from '../state/view.ts';

type Tensioner = Worksheet['tensioner'];

const THREAD: Readonly<Record<Tensioner['friction']['kind'], string>> = {
  unknown: '',
  greased: 'greased or oiled',
  dry: 'dry',
  friction: '',
  efficiency: '',
};

const UNDER_THE_NUT: Readonly<Record<Tensioner['collar']['kind'], string>> = {
  unknown: '',
  washer: '; on a washer',
  bearing: '; on a ball bearing',
  none: '',
};

/** How the thread is kept, and what is under the nut, as chosen; nothing while the first is not. */
export function greaseWords({ chosen }: Pick<SheetView, 'chosen'>): string {
  const thread = THREAD[chosen('tensioner.friction.kind')];
  return thread && thread + UNDER_THE_NUT[chosen('tensioner.collar.kind')];
}

/** How far the wrench may be off. */
export const wrenchWords = (
  { wrenchClass }: Partial<Pick<Tensioner, 'wrenchClass'>> = {},
  { quantity }: Shown,
): string => (wrenchClass === undefined ? '' : `off by up to ${quantity(wrenchClass, 'percent')}`);

/** How far the gauge goes, and its class. */
export function gaugeWords(
  { gaugeTop, gaugeClass }: Partial<Pick<Tensioner['cylinder'], 'gaugeTop' | 'gaugeClass'>> = {},
  { quantity, number }: Shown,
): string {
  const words = [
    gaugeTop === undefined ? '' : `to ${quantity(gaugeTop, 'pressure')}`,
    gaugeClass === undefined ? '' : `class ${number(100 * gaugeClass)}`,
  ];
  return words.filter((each) => each !== '').join(', ');
}

/** Whether a wrench clicks or shows the torque, by what its owner calls it. */
export function wrenchKind(called: string): 'clicks' | 'shows' | 'unknown' {
  if (/click/i.test(called)) return 'clicks';
  return /beam|dial|needle|digital|electronic/i.test(called) ? 'shows' : 'unknown';
}
