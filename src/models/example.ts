/**
 * A worked example: a lesson's model at the inputs of an invented place, told in words whose numbers the model gives.
 * Its states are sets of inputs by name: the first is where the figure starts, the others say what differs from it, and
 * `changed` is the first with one input changed.
 * Units: SI.
 * Source: definition.
 */
import type { Value, Values } from './define-model.ts';

/** The one thing that a reader changes, and what then happens. */
export interface ExampleChange {
  /** What the button says. */
  readonly say: string;
  readonly input: string;
  readonly to: Value;
  /** What happens; its numbers are those after the change. */
  readonly happens: string;
}

/** What the numbers of an example hang on; in its words `{name}`, `{name:digits}` and `{name@state}` stand for them. */
export interface ExampleTemplate {
  readonly lesson: string;
  readonly figure: string;
  /** The inputs that the reader may move. */
  readonly controls: readonly string[];
  readonly states: Readonly<Record<string, Values>>;
  readonly situation: string;
  readonly answer: string;
  readonly steps: readonly string[];
  readonly notice: string;
  readonly change: ExampleChange;
}

/** The name of the state after the one change. */
export const CHANGED = 'changed';

/** The name of the state in which the figure starts. */
export function startState({ states }: Pick<ExampleTemplate, 'states'>): string {
  const [first] = Object.keys(states);
  if (first === undefined) throw new RangeError('states must be at least 1');
  return first;
}

/** The inputs that a state sets. @throws RangeError for a state that the example does not have */
export function inputsIn(
  template: Pick<ExampleTemplate, 'states' | 'change'>,
  state: string,
): Values {
  const { states, change } = template;
  const start = states[startState(template)];
  if (state === CHANGED) return { ...start, [change.input]: change.to };
  if (!Object.hasOwn(states, state)) throw new RangeError(`state must be known (was ${state})`);
  return { ...start, ...states[state] };
}

/** A number in the words of an example: its name, in which state, and how many digits it shows. */
export interface NumberPiece {
  readonly name: string;
  readonly state?: string;
  readonly digits?: number;
}

const NUMBER = /(\{[a-zA-Z]+(?:@[a-zA-Z]+)?(?::\d)?\})/;

/** A text of an example in pieces: words, and between them numbers. */
export function examplePieces(text: string): readonly ({ readonly text: string } | NumberPiece)[] {
  return text
    .split(NUMBER)
    .filter((part) => part !== '')
    .map((part) => {
      if (!NUMBER.test(part)) return { text: part };
      const [named = '', digits] = part.slice(1, -1).split(':');
      const [name = '', state] = named.split('@');
      return { name, ...(state && { state }), ...(digits && { digits: Number(digits) }) };
    });
}
