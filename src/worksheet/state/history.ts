/**
 * The history of a project: a list of values. What is typed into one box without a pause is one step, so that undo
 * takes back what a person would call one thing.
 */
import { type Changes, withChanges } from '../keeping/merging.ts';
import { apply, type Command, inSystem, type Project } from './project.ts';

const PAUSE = 3000; // ms without a key, after which typing in the same box is a new step
const MOST = 200; // steps kept

/** What a step did, and the project on the other side of it. */
interface Step {
  readonly command: Command;
  readonly project: Project;
}

/** A project with its past and, after an undo, its future; both the latest first. */
export interface History {
  readonly present: Project;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** When the box of the last step was last typed into, while it may still grow. */
  readonly growing?: number | undefined;
}

/** A history that begins. */
export const begun = (present: Project): History => ({ present, past: [], future: [] });

function grows({ past: [last], growing }: History, command: Command, at: number): boolean {
  if (growing === undefined || last?.command.do !== 'type' || command.do !== 'type') return false;
  return last.command.path === command.path && at - growing < PAUSE;
}

/** The history after a command at a time, ms. A change of units is no step: it changes how things are written. */
export function done(history: History, command: Command, at: number): History {
  const present = apply(history.present, command);
  if (present === history.present) return history;
  if (command.do === 'units') return { ...history, present };
  const step = { command, project: history.present };
  const past = grows(history, command, at) ? history.past : [step, ...history.past].slice(0, MOST);
  return { present, past, future: [], growing: command.do === 'type' ? at : undefined };
}

/** The history whose last step has come to its end: the box was left. */
export const settled = (history: History): History =>
  history.growing === undefined ? history : { ...history, growing: undefined };

type Way = 'past' | 'future';

function moved(history: History, from: Way, to: Way): History {
  const [step, ...rest] = history[from];
  if (!step) return history;
  const back = { command: step.command, project: history.present };
  const present = inSystem(step.project, history.present.system);
  return { ...begun(present), [from]: rest, [to]: [back, ...history[to]] };
}

/** The history one step back. */
export const undone = (history: History): History => moved(history, 'past', 'future');

/** The history one step on again. */
export const redone = (history: History): History => moved(history, 'future', 'past');

/** The history with changes that came from elsewhere in all of it: no step back takes them back. */
export function everywhere(history: History, changes: Changes): History {
  const changed = (project: Project) => ({
    ...project,
    typed: withChanges(project.typed, changes),
  });
  const steps = (list: readonly Step[]) =>
    list.map((step) => ({ ...step, project: changed(step.project) }));
  return {
    ...history,
    present: changed(history.present),
    past: steps(history.past),
    future: steps(history.future),
  };
}
