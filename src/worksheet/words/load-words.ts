/** What tightens the band, in words: a torque on a screw, or a pressure in a cylinder. */
import type { LoadName } from '../../core/worksheet.ts';

/** The words for one of them. */
export interface LoadWords {
  readonly name: LoadName; // and the kind of its quantity
  readonly title: string; // over a column
  readonly noLoad: string;
  readonly letter: string; // in formulae
  readonly by: string; // what it works
  readonly scale: string; // what tells it
  readonly moving: string; // when it is read
  readonly turning: string; // what raises it, always
  readonly idle: string; // what it does before it pulls
  readonly suspects: string; // where to look if too much arrives
}

/** Both. */
export const LOAD: Readonly<Record<LoadName, LoadWords>> = {
  torque: {
    name: 'torque',
    title: 'Torque',
    noLoad: 'no-load torque',
    letter: 'M',
    by: 'screw',
    scale: 'wrench',
    moving: 'while the handle moves',
    turning: 'tightening',
    idle: 'turns the screw with no load',
    suspects: 'thread and starts',
  },
  pressure: {
    name: 'pressure',
    title: 'Pressure',
    noLoad: 'no-load pressure',
    letter: 'p',
    by: 'cylinder',
    scale: 'gauge',
    moving: 'while you pump',
    turning: 'pumping up',
    idle: 'moves the empty cylinder',
    suspects: 'piston and gauge',
  },
};
