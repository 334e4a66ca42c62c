/**
 * What happens when a button of the bench is pressed: either a command and what there is to tell, or why not, beside its box.
 * Units: N·m; text in the reader's units.
 * Source: definition.
 */
import { straightensBack } from '../../core/bench.ts';
import { say } from '../words/say.ts';
import { type Command, isAllowed, isNoted, isSlack, lookAtHand } from './bench.ts';
import type { BoxName } from './boxes.ts';
import { boxReading, type View } from './view.ts';

/** What comes of a press. */
export interface Outcome {
  readonly command?: Command;
  /** What is told to everyone. */
  readonly says?: string;
  /** What is wrong with a box. */
  readonly refusal?: { readonly box: BoxName; readonly says: string };
}

/** The buttons. */
export type Press = 'clamp' | 'turn' | 'try' | 'zero' | 'letOff' | 'pluck' | 'write' | 'measure';

const refused = (box: BoxName, says: string): Outcome => ({ refusal: { box, says } });

const NO_CLAMPS = 'Set the clamps first: without them the dial shows nothing.';

const LET_OFF_WRITTEN =
  'The reading after letting off is written already. Clamp for another series.';

/** The torque on the wrench, or what is wrong with it. */
function wrenchOf({ bench, face, mill }: View, box: 'slack' | 'wrench'): number | Outcome {
  const read = boxReading(bench, box, face);
  if (!read.ok) return refused(box, read.reason);
  const { mostTorque } = mill.told;
  if (read.value <= 0) return refused(box, 'A wrench must be set to more than 0.');
  if (!isAllowed(read.value, mostTorque)) {
    const most = say(mostTorque, 'torque', bench.system);
    return refused(box, `The maker of this mill allows ${most} at most.`);
  }
  return read.value;
}

const RUNS_BACK = 'The hand runs back while the band straightens.';

/** Whether the turn to a torque makes the hand run back for the first time at this mill. */
function isFirstRunBack({ bench, series, mill }: View, torque: number): boolean {
  const isBack = (torques: readonly number[]) =>
    torques.some((each, at) => straightensBack(mill, Math.max(0, ...torques.slice(0, at)), each));
  return (
    !bench.taken.some(({ torques }) => isBack(torques)) &&
    isBack([...(series?.torques ?? []), torque])
  );
}

/** What is told of a turn: what the hand feels. */
function feltAt(view: View, torque: number): string {
  const { bench, series, mill } = view;
  const set = say(torque, 'torque', bench.system);
  const held = Math.max(0, ...(series?.torques ?? []));
  if (held > 0 && torque < held) return `Click at ${set} at once: the screw already holds more.`;
  if (torque <= mill.hidden.dragTorque) return `Click at ${set}, and the handle has not moved.`;
  return `Click at ${set}. ${isFirstRunBack(view, torque) ? RUNS_BACK : 'Read the dial.'}`;
}

function turn(view: View): Outcome {
  const torque = wrenchOf(view, 'wrench');
  if (typeof torque !== 'number') return torque;
  if (!view.series) return { says: NO_CLAMPS };
  return { command: { do: 'turn', torque }, says: feltAt(view, torque) };
}

function tryHandle(view: View): Outcome {
  const torque = wrenchOf(view, 'slack');
  if (typeof torque !== 'number') return torque;
  if (!isSlack(view.bench))
    return {
      says: 'The band is tight. Let it off first: only a slack band shows the no-load torque.',
    };
  return { command: { do: 'try', torque } };
}

function write(view: View): Outcome {
  const { bench, face, series } = view;
  if (!lookAtHand(bench)) return { says: bench.taken.length > 0 ? LET_OFF_WRITTEN : NO_CLAMPS };
  const read = boxReading(bench, 'reading', face);
  if (!read.ok) return refused('reading', read.reason);
  return {
    command: { do: 'write', dial: bench.typed.reading.trim() },
    says: `Row ${bench.rows.length + 1} is written${series ? '' : ', after letting off'}.`,
  };
}

function zero({ bench, series }: View): Outcome {
  if (!series) return { says: NO_CLAMPS };
  if (isNoted(bench))
    return { says: 'Rows of this series are written already. A new zero would spoil them.' };
  return { command: { do: 'zero' }, says: 'The big hand is on 0.' };
}

/** What a press comes to. */
export function pressed(view: View, press: Press): Outcome {
  switch (press) {
    case 'turn':
      return turn(view);
    case 'try':
      return tryHandle(view);
    case 'write':
      return write(view);
    case 'zero':
      return zero(view);
    case 'letOff':
      return view.series ? { command: { do: 'letOff' } } : { says: NO_CLAMPS };
    case 'pluck':
      return isSlack(view.bench)
        ? { says: 'A slack band only rattles. Tighten it first.' }
        : { command: { do: 'pluck' } };
    case 'clamp':
      return { command: { do: 'clamp' }, says: 'The clamps are set on the slack band.' };
    case 'measure':
      return { command: { do: 'measure' } };
  }
}
