/**
 * What a drawing of the reference is told: which of its parts are marked, and how they are lettered. What is marked is
 * drawn heavy, in the ink that the quantity has everywhere; the rest is pencil.
 * Units: none. Source: definition.
 */
import type { SketchName, SketchPart } from '../../sketch-parts.ts';
import { type InkedLetter, type Lettering, letterOf, OWN_LETTERS } from './lettering.ts';

/** The inks a part can have. */
export type Ink = 'ink' | 'hand' | 'steel';

/** A drawing's sheet; `Part` are the parts of that drawing. */
export interface SketchSheet<Part extends string = string> {
  /** Unique on the page: ids of hatchings begin with it. */
  readonly id: string;
  has(part: Part): boolean;
  ink(part: Part): Ink;
  /** The class of a part's lines: heavy in its ink when marked, otherwise pencil. */
  line(part: Part): string;
  lettering(part: Part, words: string): Lettering;
  /** What tightens, along an axis. */
  readonly load: string;
}

/** What each drawing's component takes. */
export interface SketchProps<Name extends SketchName> {
  readonly sheet: SketchSheet<SketchPart<Name>>;
}

interface SheetOptions {
  readonly id: string;
  readonly marks: readonly string[];
  readonly symbols: Readonly<Record<string, InkedLetter>>;
  /** Beside a formula parts are named by their letters. */
  readonly inLetters: boolean;
  /** What tightens; a torque unless said. */
  readonly load?: string;
}

/** The sheet of one entry. */
export function sketchSheet({
  id,
  marks,
  symbols,
  inLetters,
  load = 'torque',
}: SheetOptions): SketchSheet {
  const letters = { ...symbols, ...OWN_LETTERS };
  const has = (part: string) => marks.includes(part);
  const ink = (part: string): Ink => {
    const own = letters[part]?.ink ?? 'plain';
    return own === 'plain' ? 'ink' : own;
  };
  const heavy = (part: string) => (ink(part) === 'ink' ? 'outline' : `${ink(part)}-line`);
  return {
    id,
    load,
    has,
    ink,
    line: (part) => (has(part) ? heavy(part) : 'construction'),
    lettering(part, words) {
      const tex = inLetters ? letters[part]?.tex : undefined;
      return tex === undefined ? { text: words, isLetter: false } : letterOf(tex);
    },
  };
}
