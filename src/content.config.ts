/** The collections of content/: their shapes, checked at build. */
import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import * as z from 'zod/mini';

const lessons = defineCollection({
  loader: glob({ base: './content/lessons', pattern: '*.mdx' }),
  schema: z.object({
    title: z.string(),
    question: z.string(),
    summary: z.string(),
    order: z.number(),
    model: z.string(),
    terms: z.array(z.string()),
    sources: z.array(z.string()),
    teacher: z.array(z.string()),
  }),
});

const terms = defineCollection({
  loader: file('./content/terms.yaml'),
  schema: z.object({ term: z.string(), meaning: z.string(), lesson: z.optional(z.string()) }),
});

const sources = defineCollection({
  loader: file('./content/sources.yaml'),
  schema: z.object({
    title: z.string(),
    detail: z.string(),
    seen: z.enum(['in print', 'in part', 'from memory', 'common practice, no source']),
  }),
});

const drawRange = z.object({ from: z.number(), to: z.number(), step: z.number() });

const problems = defineCollection({
  loader: glob({ base: './content/problems', pattern: '*.yaml' }),
  schema: z.object({
    questions: z.array(
      z.object({
        id: z.string(),
        ask: z.string(),
        draw: z.record(z.string(), drawRange),
        fixed: z.optional(z.record(z.string(), z.number())),
        answer: z.string(),
        because: z.string(),
        slips: z.array(
          z.object({
            says: z.string(),
            inputsTimes: z.optional(z.record(z.string(), z.number())),
            answerTimes: z.optional(z.number()),
          }),
        ),
      }),
    ),
  }),
});

export const collections = { lessons, terms, sources, problems };
