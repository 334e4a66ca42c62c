/**
 * Questions with generated numbers: a template draws inputs of a model, the model gives the answer, and each usual
 * slip gives the wrong answer that it leads to. Nothing is typed in as an answer.
 * Units: SI.
 */
import { randomSource } from '../core/random.ts';
import type { UnitSystem } from '../units/kinds.ts';
import {
  evaluated,
  inputsAt,
  type Model,
  numberAt,
  type Value,
  type Values,
} from './define-model.ts';

/** From where to where, in which steps, an input is drawn. */
export interface DrawRange {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/**
 * A usual slip and its name for the reader: another value of the model taken for the answer, the answer with some
 * inputs multiplied, or the answer itself multiplied.
 */
export interface Slip {
  readonly says: string;
  /** The unit system in which alone it is made: a slip with a unit of that system. */
  readonly only?: UnitSystem | undefined;
  readonly answer?: string | undefined;
  readonly inputsTimes?: Readonly<Record<string, number>> | undefined;
  readonly answerTimes?: number | undefined;
}

/** One question: `{name}` in `ask` and `because` stands for a value of the model with its unit. */
export interface ProblemTemplate {
  readonly id: string;
  readonly ask: string;
  readonly draw: Readonly<Record<string, DrawRange>>;
  readonly fixed?: Readonly<Record<string, Value>> | undefined;
  readonly answer: string;
  readonly because: string;
  readonly slips: readonly Slip[];
}

/** A drawn question. */
export interface Problem {
  readonly values: Values;
  readonly answer: number;
  readonly slips: readonly { readonly says: string; readonly answer: number }[];
}

/** What an answer turned out to be. */
export type Judgement =
  | { readonly verdict: 'right' }
  | { readonly verdict: 'slip'; readonly says: string }
  | { readonly verdict: 'wrong' };

/** How far an answer may be off, as a share of the right one: rounding is no slip. */
export const CLOSE_ENOUGH = 0.025;

function drawn({ from, to, step }: DrawRange, random: () => number): number {
  const places = Math.round((to - from) / step);
  return from + Math.floor(random() * (places + 1)) * step;
}

function answerWith(model: Model, name: string, inputs: Values): number {
  return numberAt(evaluated(model, inputs), name);
}

/** The question that a seed draws from a template, in numbers that are round in a unit system. */
export function drawProblem(
  template: ProblemTemplate,
  model: Model,
  seed: number,
  system: UnitSystem = 'metric',
): Problem {
  const random = randomSource(seed).uniform;
  const draws = Object.entries(template.draw).map(([name, range]) => [name, drawn(range, random)]);
  const inputs = inputsAt(model, { ...template.fixed, ...Object.fromEntries(draws) }, system);
  const made = template.slips.filter(({ only = system }) => only === system);
  const slips = made.map((slip) => {
    const { says, answer = template.answer, inputsTimes = {}, answerTimes = 1 } = slip;
    const slipped = Object.entries(inputsTimes).map(([name, times]) => [
      name,
      numberAt(inputs, name) * times,
    ]);
    const changed = { ...inputs, ...Object.fromEntries(slipped) };
    return { says, answer: answerWith(model, answer, changed) * answerTimes };
  });
  return {
    values: evaluated(model, inputs),
    answer: answerWith(model, template.answer, inputs),
    slips,
  };
}

const near = (value: number, answer: number) =>
  Math.abs(value - answer) <= CLOSE_ENOUGH * Math.abs(answer);

/** Right within 2.5 % (rounding is no slip), else the slip whose answer it is, else wrong. */
export function judge(problem: Problem, value: number): Judgement {
  if (near(value, problem.answer)) return { verdict: 'right' };
  const slip = problem.slips.find(({ answer }) => near(value, answer));
  return slip ? { verdict: 'slip', says: slip.says } : { verdict: 'wrong' };
}

/** A value in a template's text: its name, and how many digits it shows where that is not left to its kind. */
export interface ValuePiece {
  readonly name: string;
  readonly digits?: number;
}

/** A template's text in pieces: plain text, and between it values, `{name}` or `{name:digits}`. */
export function pieces(text: string): readonly ({ readonly text: string } | ValuePiece)[] {
  return text
    .split(/(\{[a-zA-Z]+(?::\d)?\})/)
    .filter((part) => part !== '')
    .map((part) => {
      if (!part.startsWith('{')) return { text: part };
      const [name = '', digits] = part.slice(1, -1).split(':');
      return digits ? { name, digits: Number(digits) } : { name };
    });
}
