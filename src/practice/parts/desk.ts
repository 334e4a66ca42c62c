/** What the parts of the bench are given: the view, and what can be done. */
import type { Press } from '../state/actions.ts';
import type { Command } from '../state/bench.ts';
import type { BoxName } from '../state/boxes.ts';
import type { View } from '../state/view.ts';

/** The desk at one moment. */
export interface DeskProps {
  readonly view: View;
  readonly run: (command: Command) => void;
  readonly press: (press: Press) => void;
  /** What was told last, and what is wrong with a box since the last press. */
  readonly said: string;
  readonly refusals: Readonly<Partial<Record<BoxName, string>>>;
}
