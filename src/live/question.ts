/**
 * A question with drawn numbers: draws it, judges an answer with a unit, and replies. It comes with the first answer.
 */
import { kindOf } from '../models/define-model.ts';
import { drawProblem, judge, type Problem, type ProblemTemplate } from '../models/problem.ts';
import { inWords } from '../models/problem-words.ts';
import type { QuantityKind, UnitSystem } from '../units/kinds.ts';
import { unitLabel } from '../units/label.ts';
import { parseQuantity } from '../units/reading/parse-quantity.ts';
import type { PageStore } from './store.ts';

/** The reply to an answer. */
function reply(
  problem: Problem,
  value: number,
  because: string,
  say: (text: string) => string,
): string {
  const judgement = judge(problem, value);
  if (judgement.verdict === 'right') return `Yes. ${because}`;
  if (judgement.verdict === 'slip') return say(judgement.says);
  return 'Not correct, and not one of the usual slips. Write the equation down with these numbers and try again, or look at the answer. (Your last digit may differ: the answer is calculated unrounded.)';
}

/** What to say of a bare number that is right in the other unit system; undefined for any other answer. */
function otherUnit(text: string, kind: QuantityKind, system: UnitSystem, problem: Problem) {
  const other: UnitSystem = system === 'us' ? 'metric' : 'us';
  const [here, there] = ([system, other] as const).map((one) => parseQuantity(text, kind, one));
  if (!here?.ok || !there?.ok || judge(problem, here.value).verdict === 'right') return undefined;
  if (here.value === there.value || judge(problem, there.value).verdict !== 'right')
    return undefined;
  return `That is right in ${unitLabel(kind, other)}. A number alone is read in ${unitLabel(kind, system)} here: write the unit behind it.`;
}

/** A drawn question in the units of its reader. */
export interface Question {
  readonly ask: string;
  readonly because: string;
  readonly replyTo: (text: string) => { readonly isRead: boolean; readonly reply: string };
}

/** The question that a seed draws from a template. */
export function question(template: ProblemTemplate, store: PageStore, seed: number): Question {
  const system = store.system.value;
  const problem = drawProblem(template, store.model, seed, system);
  const kind = kindOf(store.model, template.answer);
  const say = (text: string) => inWords(text, store.model, problem.values, system);
  const [ask, because] = [say(template.ask), say(template.because)];
  const replyTo = (text: string) => {
    const typed = parseQuantity(text, kind, system);
    const answer = typed.ok ? reply(problem, typed.value, because, say) : typed.reason;
    return { isRead: typed.ok, reply: otherUnit(text, kind, system, problem) ?? answer };
  };
  return { ask, because, replyTo };
}
