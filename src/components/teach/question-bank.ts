/** The questions of all lessons, in the order of the lessons, as the page of problem sheets has them. */
import { getCollection } from 'astro:content';
import type { LessonQuestions } from '../../teaching/sheets/drawn.ts';
import { questionsOf } from '../lesson/questions/of-lesson.ts';

/** Every lesson that has questions. */
export async function questionBank(): Promise<readonly LessonQuestions[]> {
  const lessons = (await getCollection('lessons')).sort((a, b) => a.data.order - b.data.order);
  const bank = await Promise.all(
    lessons.map(async ({ id: slug, data: { title, order } }) => ({
      slug,
      title,
      order,
      templates: await questionsOf(slug),
    })),
  );
  return bank.filter(({ templates }) => templates.length > 0);
}
