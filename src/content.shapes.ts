/** Shapes of content/ that several collections share, or that are long: for the check of the content alone. */
import { z } from 'astro/zod';

/** Inputs of a model, by their names. */
export const inputValues = z.record(z.string(), z.union([z.number(), z.string()]));

/** A number to tell: `{name}` stands for a value of the rig or of a lesson, at these inputs. */
const tell = z.strictObject({
  of: z.string(),
  at: z.optional(z.union([z.literal('asked'), inputValues])),
  says: z.string(),
});

/** A part of a plan: its minutes, what to do, then the hand-out, the figures (`lesson/figure`) and the pages that it needs. */
export const timing = z.strictObject({
  minutes: z.number(),
  what: z.string(),
  how: z.string(),
  handout: z.optional(z.string()),
  figures: z.optional(z.array(z.string())),
  go: z.optional(z.array(z.strictObject({ to: z.string(), says: z.string() }))),
  tell: z.optional(z.array(tell)),
});
