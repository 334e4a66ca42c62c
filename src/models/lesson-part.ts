/**
 * A part of a lesson that works only when it is asked to: its buttons are on the page from the build, its code comes with
 * the first press of one. It reads and sets the lesson's values as a reader would.
 * Units: SI in the values.
 * Source: definition.
 */
import type { UnitSystem } from '../units/kinds.ts';
import type { Values } from './define-model.ts';

/** Where a part is, and what it may do there. */
export interface PartPlace {
  /** The part on the page, with its buttons. */
  readonly element: HTMLElement;
  /** Inputs and outputs as they now are. */
  readonly values: () => Values;
  /** The reader's units. */
  readonly system: () => UnitSystem;
  /** Sets an input. */
  readonly set: (name: string, value: number) => void;
  /** What plays a sound, opened in the press of a button with `data-plays`; undefined where there is none. */
  readonly device: () => AudioContext | undefined;
  /** Says something, also to who listens. */
  readonly say: (words: string) => void;
}

/** What a part's buttons do, by the name of their action. */
export type PartActions = Readonly<Record<string, () => void>>;

/** A module `*.part.ts` exports one of these as `part`: called once, at the first press. */
export type LessonPart = (place: PartPlace) => PartActions;
