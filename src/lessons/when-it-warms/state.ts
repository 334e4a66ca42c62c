/** What the figures of this lesson are, and what they and their parts are drawn from. */
import type { FigureModule, FigureState } from '../../figures/figure.ts';
import type { whenItWarms } from './model.ts';

/** The state of a figure, by the names of the lesson's model. */
export type State = FigureState<typeof whenItWarms>;

/** A figure of that state. */
export type Figure = FigureModule<typeof whenItWarms>;
