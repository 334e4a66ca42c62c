/**
 * The lesson that the page is about: its folder's `Start.astro` puts it here, the live elements take it from here, and
 * so a page loads its own lesson and nothing of its siblings.
 * Units: none of its own.
 */
import type { QuantityKind, UnitSystem } from '../units/kinds.ts';
import type { Model, Values } from './define-model.ts';

/** What is read off one of a lesson's figures and typed, and what is said to it. */
export interface ReadOff {
  readonly kind: QuantityKind;
  /** In whose units a number without one is read: those of the figure's own scale. */
  readonly unitsOf: (values: Values) => UnitSystem;
  /** The reply to a typed value, SI. */
  readonly replyTo: (values: Values, typed: number) => string;
  /** What would have been right, and why. */
  readonly because: (values: Values) => string;
}

/** What a lesson brings to its page. */
export interface LessonOnPage {
  readonly model: Model;
  /** Its figures' modules by their file, each fetched when it is wanted. */
  readonly figures: Readonly<Record<string, () => Promise<unknown>>>;
  /** Fetched with the first answer, where something is read off a figure. */
  readonly readOff?: () => Promise<ReadOff>;
  /** The modules of its parts by their file, each fetched when one of its buttons is pressed. */
  readonly parts?: Readonly<Record<string, () => Promise<unknown>>>;
}

let lesson: LessonOnPage | undefined;

/** Called by a lesson's start, before the page comes alive; without a lesson it takes away what was there. */
export function putOnPage(own?: LessonOnPage): void {
  lesson = own;
}

/** The page's lesson; undefined on a page that has none. */
export const lessonOnPage = (): LessonOnPage | undefined => lesson;
