/** The collections of content/: their shapes, checked at build. */
import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { hasParts, SKETCH_NAMES } from './components/reference/sketch-parts.ts';
import { WORKED_TOPICS } from './components/worked/topics.ts';
import { inputValues, timing } from './content.shapes.ts';
import { QUANTITY_KINDS } from './units/kinds.ts';

const lessons = defineCollection({
  loader: glob({ base: './content/lessons', pattern: '*.mdx' }),
  schema: z.object({
    title: z.string(),
    question: z.string(),
    summary: z.string(),
    order: z.number(),
    terms: z.array(z.string()),
    sources: z.array(z.string()),
    teacher: z.array(z.string()),
  }),
});

/** A small drawing beside an entry, and which of its parts the entry is about. */
const sketch = z.strictObject({ of: z.enum(SKETCH_NAMES), marks: z.array(z.string()) }).check(
  z.refine(({ of, marks }) => hasParts(of, marks), {
    error: 'marks must be parts of the sketch',
  }),
);

/** The drawings beside the terms, by the key of the term. */
const sketches = defineCollection({ loader: file('./content/sketches.yaml'), schema: sketch });

const terms = defineCollection({
  loader: file('./content/terms.yaml'),
  schema: z.object({ term: z.string(), meaning: z.string(), lesson: z.optional(z.string()) }),
});

const sources = defineCollection({
  loader: file('./content/sources.yaml'),
  schema: z.object({
    title: z.string(),
    detail: z.string(),
    seen: z.enum([
      'in print',
      'in part',
      'from memory',
      'derived here',
      'common practice, no source',
    ]),
    /** How the ids of its cases begin among the published checks; the page counts their figures. */
    checks: z.optional(z.array(z.string())),
  }),
});

const symbols = defineCollection({
  loader: file('./content/symbols.yaml'),
  schema: z.object({
    tex: z.string(),
    meaning: z.string(),
    ink: z.enum(['hand', 'steel', 'plain']),
    kind: z.enum(QUANTITY_KINDS),
    order: z.number(),
    /** Typical values in SI: one number, or two for a range. */
    typical: z.optional(z.array(z.number())),
    source: z.optional(z.string()),
  }),
});

const formulae = defineCollection({
  loader: glob({ base: './content/formulae', pattern: '*.yaml' }),
  schema: z.object({
    title: z.string(),
    order: z.number(),
    /** The lesson that teaches them. */
    taught: z.string(),
    formulae: z.array(
      z.object({
        name: z.string(),
        tex: z.string(),
        where: z.optional(z.array(z.string())),
        /** Its letters that are not among the symbols, or stand for something else there: TeX, and what it is. */
        letters: z.optional(z.record(z.string(), z.string())),
        limits: z.string(),
        sketch: z.optional(sketch),
        sources: z.array(z.string()),
      }),
    ),
  }),
});

const drawRange = z.strictObject({ from: z.number(), to: z.number(), step: z.number() });

const problems = defineCollection({
  loader: glob({ base: './content/problems', pattern: '*.yaml' }),
  schema: z.strictObject({
    questions: z.array(
      z.strictObject({
        id: z.string(),
        ask: z.string(),
        draw: z.record(z.string(), drawRange),
        fixed: z.optional(inputValues),
        answer: z.string(),
        because: z.string(),
        slips: z.array(
          z.strictObject({
            says: z.string(),
            only: z.optional(z.enum(['metric', 'us'])),
            answer: z.optional(z.string()),
            inputsTimes: z.optional(z.record(z.string(), z.number())),
            answerTimes: z.optional(z.number()),
          }),
        ),
      }),
    ),
  }),
});

const cells = z.array(z.array(z.string()));

const mills = defineCollection({
  loader: glob({ base: './content/mills', pattern: '*.yaml' }),
  schema: z.object({
    label: z.string(),
    about: z.string(),
    system: z.enum(['metric', 'us']),
    thread: z.string(),
    boxes: z.record(z.string(), z.string()),
    choices: z.record(z.string(), z.string()),
    readings: cells,
    ways: z.array(z.object({ name: z.string(), torque: z.string(), readings: cells })),
  }),
});

/** Questions as people ask them, with the short answer and where the whole one is. */
const asked = defineCollection({
  loader: file('./content/asked.yaml'),
  schema: z.strictObject({ asks: z.string(), says: z.string(), to: z.string(), words: z.string() }),
});

/** Worked examples: what they say of states and names is checked against the lesson's model when they are built. */
const worked = defineCollection({
  loader: glob({ base: './content/worked', pattern: '*.yaml' }),
  schema: z.strictObject({
    title: z.string(),
    question: z.string(),
    topic: z.enum(WORKED_TOPICS),
    /** Where it happens: one of the invented mills, or the classroom rig. */
    place: z.string(),
    lesson: z.string(),
    figure: z.string(),
    controls: z.array(z.string()).min(1).max(3),
    /** Inputs in SI; the first is where the figure starts, the others say what differs from it. */
    states: z.record(z.string(), inputValues),
    situation: z.string(),
    answer: z.string(),
    steps: z.array(z.string()).min(2).max(5),
    notice: z.string(),
    change: z.strictObject({
      say: z.string(),
      input: z.string(),
      to: z.union([z.number(), z.string()]),
      happens: z.string(),
    }),
    /** What to mind at this machine, where a hand moves. */
    caution: z.optional(z.string()),
    terms: z.array(z.string()),
    /** Other lessons that belong to it. */
    also: z.optional(z.array(z.string())),
    /** The mill of content/mills whose sheet it opens. */
    sheet: z.optional(z.string()),
  }),
});

/** Plans for teachers: what to do, minute by minute, with which hand-out, figures (`lesson/figure`), pages, numbers. */
const workshops = defineCollection({
  loader: glob({ base: './content/workshops', pattern: '*.mdx' }),
  schema: z.strictObject({
    title: z.string(),
    summary: z.string(),
    order: z.number(),
    minutes: z.number(),
    /** The lessons that it uses, and the hand-outs to print, by their keys. */
    lessons: z.array(z.string()),
    handouts: z.array(z.string()),
    aims: z.array(z.string()),
    timings: z.array(timing),
  }),
});

/** Hand-outs, by the key of their lesson: a drawing in a state, lines with blanks, a table to fill in. */
const handouts = defineCollection({
  loader: glob({ base: './content/handouts', pattern: '*.yaml' }),
  schema: z.strictObject({
    figure: z.string(),
    at: inputValues,
    tasks: z.array(z.strictObject({ says: z.string(), at: z.optional(inputValues) })),
    table: z.strictObject({
      title: z.string(),
      columns: z.array(z.string()),
      rows: z.optional(z.array(z.string())),
      blankRows: z.optional(z.number()),
    }),
  }),
});

/** Questions to ask before and after a class. */
const concepts = defineCollection({
  loader: file('./content/before-and-after.yaml'),
  schema: z.strictObject({
    id: z.string(),
    order: z.number(),
    lesson: z.string(),
    at: z.optional(inputValues),
    ask: z.string(),
    options: z.array(
      z.strictObject({
        says: z.optional(z.string()),
        value: z.optional(z.string()),
        times: z.optional(z.number()),
        right: z.optional(z.literal(true)),
        slip: z.optional(z.string()),
      }),
    ),
  }),
});

export const collections = {
  lessons,
  terms,
  sketches,
  sources,
  symbols,
  formulae,
  problems,
  mills,
  asked,
  worked,
  workshops,
  handouts,
  concepts,
};
