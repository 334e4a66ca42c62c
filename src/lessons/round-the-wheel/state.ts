/** What the figures of this lesson are, and what they are drawn from. */
import type { FigureModule, FigureState } from '../../figures/figure.ts';
import type { roundTheWheel } from './model.ts';

/** The state of a figure, by the names of the lesson's model. */
export type State = FigureState<typeof roundTheWheel>;

/** A figure of that state. */
export type Figure = FigureModule<typeof roundTheWheel>;
