/**
 * A problem sheet and its key out of a seed. Every sheet of a set asks the same questions, with numbers of its own; the
 * same seed gives the same sheet wherever it is drawn.
 * Units: SI in, text in the sheet's unit system out.
 */
import { kindOf, type Model } from '../../models/define-model.ts';
import { drawProblem, type Problem, type ProblemTemplate } from '../../models/problem.ts';
import { inWords } from '../../models/problem-words.ts';
import { formatParts } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { inTurn } from './in-turn.ts';

/** The questions of one lesson, as the page has them. */
export interface LessonQuestions {
  readonly slug: string;
  readonly title: string;
  readonly order: number;
  readonly templates: readonly ProblemTemplate[];
}

/** One question of the lessons chosen, with the place that it has among its lesson's. */
export interface PlacedQuestion {
  readonly lesson: LessonQuestions;
  readonly place: number;
  readonly template: ProblemTemplate;
}

/** A question as it is printed, and what the key says of it. */
export interface DrawnQuestion {
  readonly id: string;
  readonly lesson: string;
  readonly ask: string;
  /** A number without its unit, as are those of the slips. */
  readonly answer: string;
  readonly unit: string;
  readonly because: string;
  readonly slips: readonly { readonly says: string; readonly answer: string }[];
}

/** One sheet of a set. */
export interface DrawnSheet {
  readonly seed: number;
  readonly questions: readonly DrawnQuestion[];
}

const MOST_LESSONS = 64;
const MOST_OF_A_LESSON = 16;

/** The first question of each lesson, then the second of each that has one, and so on. */
function inTurns(lessons: readonly LessonQuestions[]): readonly PlacedQuestion[] {
  const most = Math.max(0, ...lessons.map(({ templates }) => templates.length));
  return Array.from({ length: most }, (_, place) => place).flatMap((place) =>
    lessons.flatMap((lesson) => {
      const template = lesson.templates[place];
      return template ? [{ lesson, place, template }] : [];
    }),
  );
}

/** So many of a list, evenly out of it. */
const evenly = <T>(list: readonly T[], count: number): readonly T[] =>
  list.filter((_, place) => ((place + 1) * count) % list.length < count);

/** Which questions a sheet asks: as many of each lesson as can be, fewer where the lessons have no more. In their order. */
export function questionsAsked(
  lessons: readonly LessonQuestions[],
  count: number,
): readonly PlacedQuestion[] {
  const asked =
    count < lessons.length
      ? inTurns(evenly(lessons, count)).slice(0, count)
      : inTurns(lessons).slice(0, count);
  return asked.toSorted((a, b) => a.lesson.order - b.lesson.order || a.place - b.place);
}

const MOST_SHEETS = 1_000_000;
const TRIES = 4; // together with the sheets' number this stays below 2³²

/** A seed of its own for each question of each sheet and each try, the same whatever else is on the sheet. */
const seedOf = (seed: number, { lesson, place }: PlacedQuestion, again: number): number =>
  ((again * MOST_SHEETS + seed) * MOST_LESSONS + lesson.order) * MOST_OF_A_LESSON + place;

/**
 * The numbers of a question on a sheet. A sheet of odd number draws again while it reads as the sheet before or behind
 * it; those of even number never do, so that each sheet is known by its number alone.
 */
function drawnApart(
  asked: PlacedQuestion,
  model: Model,
  seed: number,
  system: UnitSystem,
): Problem {
  const { template } = asked;
  const drawn = (sheet: number, again: number) =>
    drawProblem(inTurn(template, model, sheet, system), model, seedOf(sheet, asked, again), system);
  const says = ({ values }: Problem) => inWords(template.ask, model, values, system);
  let own = drawn(seed, 0);
  if (seed % 2 === 0) return own;
  const besides = [seed - 1, seed + 1].map((sheet) => says(drawn(sheet, 0)));
  for (let again = 1; again < TRIES && besides.includes(says(own)); again += 1)
    own = drawn(seed, again);
  return own;
}

function drawnQuestion(
  asked: PlacedQuestion,
  model: Model,
  seed: number,
  system: UnitSystem,
): DrawnQuestion {
  const { lesson, template } = asked;
  const problem = drawnApart(asked, model, seed, system);
  const say = (text: string) => inWords(text, model, problem.values, system);
  const kind = kindOf(model, template.answer);
  const written = (value: number) => formatParts(value, kind, system).number;
  return {
    id: `${lesson.slug}-${template.id}`,
    lesson: lesson.title,
    ask: say(template.ask),
    answer: written(problem.answer),
    unit: unitLabel(kind, system),
    because: say(template.because),
    slips: problem.slips.map(({ says, answer }) => ({ says: say(says), answer: written(answer) })),
  };
}

/** One sheet. @throws RangeError where a lesson's model is not among those given */
export function drawnSheet(
  asked: readonly PlacedQuestion[],
  models: Readonly<Record<string, Model>>,
  seed: number,
  system: UnitSystem,
): DrawnSheet {
  const questions = asked.map((each) => {
    const model = models[each.lesson.slug];
    if (!model) throw new RangeError(`${each.lesson.slug} must be a lesson with a model`);
    return drawnQuestion(each, model, seed, system);
  });
  return { seed, questions };
}
