/**
 * The names of the worksheet's inputs, made from its type: a misspelt one stops the type check.
 * Units: none.
 * Source: definition.
 */
import type { Worksheet } from './inputs.ts';

/** Every path into a part: the names of what it holds, and beyond each the paths into that. */
type PathInto<Part> = Part extends readonly (infer Item)[]
  ? `${number}` | `${number}.${PathInto<Item>}`
  : Part extends object
    ? { [Name in keyof Part & string]-?: Name | `${Name}.${PathInto<Part[Name]>}` }[keyof Part &
        string]
    : never;

/** The name of an input, or of a group of them: `band.bodyWidth`, `readings.3.dial`, `readings`. */
export type WorksheetPath = PathInto<Omit<Worksheet, 'version'>>;
