/** The unit that the torques of a sheet are typed in, which is that of its wrench. */
import { findUnit } from '../units/reading/lookup.ts';
import { entriesOf, type Typed } from './typed.ts';

const TORQUE = /^(?:use|readings\.\d+|ways\.\d+)\.torque$/;

const isInInchPounds = (text: string): boolean =>
  findUnit(text.replace(/^[-\d\s.,/]+/, ''), 'torque') === 'in·lbf';

/** Whether most torques are typed in inch-pounds. */
export function wrenchHasInchPounds(typed: Typed): boolean {
  const texts = entriesOf(typed).flatMap(([path, text]) => (TORQUE.test(path) ? [text] : []));
  return 2 * texts.filter(isInInchPounds).length > texts.length;
}
