/**
 * The six stages of the chain, in their order: what each is called, its ink, and how its number comes to be known.
 * Units: turns.
 */
import type { Stage } from '../../figures/mill/stage-places.ts';
import type { Ink } from '../../models/words.ts';
import type { State } from './state.ts';

interface StageWords {
  readonly stage: Stage;
  readonly words: string;
  readonly ink: Ink;
  /** With what it can be measured; nothing where it can only be calculated. */
  readonly tool?: string;
}

const STAGES: readonly StageWords[] = [
  { stage: 'torque', words: 'torque', ink: 'hand', tool: 'wrench' },
  { stage: 'thrust', words: 'thrust', ink: 'plain' },
  { stage: 'wheelForce', words: 'wheel force', ink: 'plain' },
  { stage: 'strandForce', words: 'strand force', ink: 'steel' },
  { stage: 'stress', words: 'stress', ink: 'steel' },
  { stage: 'stretch', words: 'stretch', ink: 'steel', tool: 'dial' },
];

const TURNS_PER_STAGE = 0.02;

/** The stages that stand on the drawing yet: one after the other, as the handle begins to turn. */
export function stagesShown({ values }: State): readonly StageWords[] {
  return STAGES.filter((_, place) => values.turns >= place * TURNS_PER_STAGE);
}

/** Whether the whole chain stands on the drawing. */
export function isChainShown(state: State): boolean {
  return stagesShown(state).length === STAGES.length;
}
