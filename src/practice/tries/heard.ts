/**
 * What the plucked strand told, pluck by pluck. Apart, for it comes when it is first wanted.
 * Units: N·m, Hz; text in the reader's units.
 * Source: definition.
 */
import { benchStress, type HeardNote, pluckedNote } from '../../core/bench.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { View } from '../state/view.ts';

/** A pluck: the torque then, and the note that was heard, Hz; none where the band was too slack to sing. */
interface Heard {
  readonly torque: number;
  readonly note: number | undefined;
}

/** What each pluck sounded like. */
const heard = ({ bench, mill }: View): readonly Heard[] =>
  bench.plucks.map(({ series, place }, at) => {
    const torque = Math.max(0, ...(bench.taken[series]?.torques.slice(0, place) ?? []));
    return { torque, note: pluckedNote(mill, benchStress(mill, torque), at) };
  });

/** The last note that was heard. */
export function lastNote(view: View): HeardNote | undefined {
  const { torque, note } = heard(view).findLast((each) => each.note !== undefined) ?? {};
  return torque === undefined || note === undefined ? undefined : { torque, note };
}

/** The same in words. */
export const notesInWords = (view: View): readonly string[] =>
  heard(view).map(({ torque, note }) => {
    const { system } = view.bench;
    const words =
      note === undefined ? 'too slack to sing' : formatQuantity(note, 'frequency', system);
    return `${formatQuantity(torque, 'torque', system)}: ${words}`;
  });
