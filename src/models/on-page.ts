/**
 * The lesson that the page is about: its folder's `Start.astro` puts it here, the live elements take it from here, and
 * so a page loads its own lesson and nothing of its siblings.
 * Units: none of its own.
 */
import type { Model } from './define-model.ts';

/** What a lesson brings to its page. */
export interface LessonOnPage {
  readonly model: Model;
  /** Its figures' modules by their file, each fetched when it is wanted. */
  readonly figures: Readonly<Record<string, () => Promise<unknown>>>;
  /** The modules of its parts by their file, each fetched when one of its buttons is pressed. */
  readonly parts?: Readonly<Record<string, () => Promise<unknown>>>;
}

let lesson: LessonOnPage | undefined;

/** Called by a lesson's start, before the page comes alive. */
export function putOnPage(own: LessonOnPage): void {
  lesson = own;
}

/** The page's lesson; undefined on a page that has none. */
export const lessonOnPage = (): LessonOnPage | undefined => lesson;
