/** The twelve lessons in their order: those that are written by their own words, the others by the plan's. */
import { getCollection } from 'astro:content';

/** One line of the table of contents. */
export interface PlannedLesson {
  readonly slug: string;
  readonly order: number;
  readonly title: string;
  readonly question: string;
  readonly isWritten: boolean;
}

/** All lessons of the plan, first to last. */
export async function plannedLessons(): Promise<readonly PlannedLesson[]> {
  const written = new Map((await getCollection('lessons')).map(({ id, data }) => [id, data]));
  const plan = await getCollection('plan');
  return plan
    .map(({ id, data: { order, title, question } }) => {
      const own = written.get(id);
      return { slug: id, order, title, question, ...own, isWritten: own !== undefined };
    })
    .map(({ slug, order, title, question, isWritten }) => ({
      slug,
      order,
      title,
      question,
      isWritten,
    }))
    .sort((one, other) => one.order - other.order);
}
