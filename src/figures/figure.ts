/**
 * What a figure is: three functions of one state. The same code draws at build time and in the browser.
 * Units: SI in `values`.
 * Source: definition.
 */
import type { VNode } from 'preact';
import type { Model, ValuesOf } from '../models/define-model.ts';
import type { UnitSystem } from '../units/kinds.ts';

/** All that a drawing of a model may depend on. */
export interface FigureState<M extends Model = Model> {
  readonly values: ValuesOf<M>;
  readonly system: UnitSystem;
  /** A drawing of its own for a phone: another viewBox, fewer labels. */
  readonly narrow: boolean;
  /** Put before every id, because one figure stands on a page more than once. */
  readonly idPrefix: string;
  /** What the reader guessed before playing, in SI, once committed. */
  readonly guess?: number | undefined;
}

/** A figure module exports one of these as `figure`. */
export interface FigureModule<M extends Model = Model> {
  /** The present finding, in a sentence with its number. */
  readonly finding: (state: FigureState<M>) => string;
  /** One sentence for who cannot see the drawing. */
  readonly description: (state: FigureState<M>) => string;
  /** Scales, exaggerations and assumptions, for the strip under the drawing. */
  readonly notes: (state: FigureState<M>) => readonly string[];
  readonly Drawing: (state: FigureState<M>) => VNode;
}
