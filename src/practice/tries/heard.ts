/**
 * What the slack handle and the plucked strand told, try by try. Apart, for it comes when it is first wanted.
 * Units: N·m, Hz; text in the reader's units.
 * Source: definition.
 */
import { benchStress, pluckedNote, turnsSlack } from '../../core/bench.ts';
import type { View } from '../state/view.ts';
import { say } from '../words/say.ts';

/** What each try of the slack handle showed. */
export const triesInWords = ({ bench, mill }: View): readonly string[] =>
  bench.tries.map((torque, at) => {
    const set = say(torque, 'torque', bench.system);
    return turnsSlack(mill, torque, at)
      ? `${set}: the handle turns`
      : `${set}: the wrench clicks, the handle stays`;
  });

/** A pluck: the torque then, and the note that was heard, Hz; none where the band was too slack to sing. */
export interface Heard {
  readonly torque: number;
  readonly note: number | undefined;
}

/** What each pluck sounded like. */
export const heard = ({ bench, mill }: View): readonly Heard[] =>
  bench.plucks.map(({ series, place }, at) => {
    const torque = Math.max(0, ...(bench.taken[series]?.torques.slice(0, place) ?? []));
    return { torque, note: pluckedNote(mill, benchStress(mill, torque), at) };
  });

/** The same in words. */
export const notesInWords = (view: View): readonly string[] =>
  heard(view).map(({ torque, note }) => {
    const { system } = view.bench;
    const words = note === undefined ? 'too slack to sing' : say(note, 'frequency', system);
    return `${say(torque, 'torque', system)}: ${words}`;
  });
