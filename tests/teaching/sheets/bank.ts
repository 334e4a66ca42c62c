/** The questions of all lessons as the page has them, read from their files. */
import { parse } from 'yaml';
import type { ProblemTemplate } from '../../../src/models/problem.ts';
import type { LessonQuestions } from '../../../src/teaching/sheets/drawn.ts';
import { fieldsOf, frontmatterOf } from '../../structure/content-files.ts';
import { filesUnder, textOf } from '../../structure/project-files.ts';

/** In the order of the lessons. */
export const bank: readonly LessonQuestions[] = filesUnder('content/problems')
  .map((path) => {
    const slug = path.replace(/^.*\/|\.yaml$/g, '');
    const head = frontmatterOf(textOf(`content/lessons/${slug}.mdx`));
    const { questions } = parse(textOf(path)) as { questions: readonly ProblemTemplate[] };
    return {
      slug,
      title: fieldsOf(head, 'title')[0] ?? '',
      order: Number(fieldsOf(head, 'order')[0]),
      templates: questions,
    };
  })
  .sort((one, other) => one.order - other.order);
