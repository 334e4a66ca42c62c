/** What is chosen on the page of problem sheets: texts as typed, boxes as ticked, and the choices that they come to. */
import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import type { UnitSystem } from '../../units/kinds.ts';
import { type Whole, wholeIn } from '../kit/whole.ts';
import { choicesIn, LIMITS, type SheetChoices, startingChoices } from './choices.ts';

/** The boxes with a number in them. */
export const NUMBERS = ['seed', 'questions', 'variants'] as const;
export type NumberName = (typeof NUMBERS)[number];
type Texts = Readonly<Record<NumberName, string>>;

/** The page's state. */
export interface SheetState {
  readonly all: readonly string[];
  readonly texts: Signal<Texts>;
  readonly rest: Signal<Omit<SheetChoices, NumberName>>;
  readonly read: ReadonlySignal<Readonly<Record<NumberName, Whole>>>;
  /** Undefined while something typed or ticked cannot be used. */
  readonly choices: ReadonlySignal<SheetChoices | undefined>;
  /** The parts of the link that could not be used. */
  readonly refused: Signal<readonly string[]>;
}

const textsOf = (choices: SheetChoices): Texts => ({
  seed: String(choices.seed),
  questions: String(choices.questions),
  variants: String(choices.variants),
});

/** The state as the page starts; `all` are the lessons that have questions. */
export function createSheetState(all: readonly string[], units: UnitSystem): SheetState {
  const start = startingChoices(all, units);
  const texts = signal(textsOf(start));
  const rest = signal<Omit<SheetChoices, NumberName>>(start);
  const read = computed(() => {
    const { seed, questions, variants } = texts.value;
    return {
      seed: wholeIn(seed, LIMITS.seed),
      questions: wholeIn(questions, LIMITS.questions),
      variants: wholeIn(variants, LIMITS.variants),
    };
  });
  const choices = computed(() => {
    const { seed, questions, variants } = read.value;
    if (!seed.ok || !questions.ok || !variants.ok || rest.value.lessons.length === 0)
      return undefined;
    const numbers = { seed: seed.value, questions: questions.value, variants: variants.value };
    return { ...rest.value, ...numbers };
  });
  return { all, texts, rest, read, choices, refused: signal<readonly string[]>([]) };
}

/** Takes in what a link holds; what it leaves out is as the page starts. */
export function takeLink(state: SheetState, fragment: string, units: UnitSystem): void {
  const start = startingChoices(state.all, units);
  const { choices, refused } = choicesIn(fragment, start, state.all);
  state.texts.value = textsOf(choices);
  state.rest.value = choices;
  state.refused.value = refused;
}

/** Ticks a lesson or takes its tick away; the lessons stay in their order. */
export function tickLesson({ all, rest }: SheetState, lesson: string, isTicked: boolean): void {
  const { lessons } = rest.value;
  const ticked = all.filter((each) => (each === lesson ? isTicked : lessons.includes(each)));
  rest.value = { ...rest.value, lessons: ticked };
}
