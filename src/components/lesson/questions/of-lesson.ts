/** The questions of a lesson, from their file. */
import { getEntry } from 'astro:content';
import type { ProblemTemplate } from '../../../models/problem.ts';

/** In the order of their file; none where the lesson has no file of questions. */
export async function questionsOf(slug: string): Promise<readonly ProblemTemplate[]> {
  return (await getEntry('problems', slug))?.data.questions ?? [];
}
