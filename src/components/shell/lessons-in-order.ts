/** The lessons, first to last. */
import { getCollection } from 'astro:content';

/** One line of the table of contents. */
export interface LessonLine {
  readonly slug: string;
  readonly order: number;
  readonly title: string;
  readonly question: string;
}

/** All of them by their own words. */
export async function lessonsInOrder(): Promise<readonly LessonLine[]> {
  return (await getCollection('lessons'))
    .map(({ id, data: { order, title, question } }) => ({ slug: id, order, title, question }))
    .sort((one, other) => one.order - other.order);
}
