/**
 * `<check-yourself>`: a question with drawn numbers, answered with a unit. A wrong answer is compared with what the
 * usual slips would have given, and the reply names the slip; a right answer in another unit is right.
 */
import { signal } from '@preact/signals-core';
import { kindOf, numberAt } from '../../models/define-model.ts';
import {
  drawProblem,
  judge,
  type Problem,
  type ProblemTemplate,
  pieces,
} from '../../models/problem.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { parseQuantity } from '../../units/parse-quantity.ts';
import type { PageStore } from '../store.ts';
import { StoreElement } from './store-element.ts';
import { setText } from './value.ts';

/** A text of the template with the problem's own numbers in one unit system. */
function filled(text: string, problem: Problem, store: PageStore, system: UnitSystem): string {
  return pieces(text)
    .map((piece) => {
      if ('text' in piece) return piece.text;
      const kind = kindOf(store.model, piece.name);
      const { digits } = piece;
      return formatQuantity(numberAt(problem.values, piece.name), kind, system, { digits });
    })
    .join('');
}

/** The reply to an answer. */
function reply(problem: Problem, value: number, because: string): string {
  const judgement = judge(problem, value);
  if (judgement.verdict === 'right') return `Yes. ${because}`;
  if (judgement.verdict === 'slip') return judgement.says;
  return 'Not that, and not one of the usual slips. Write the equation down with these numbers and try again, or look at the answer.';
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

/** One question. */
export class CheckYourself extends StoreElement {
  protected bind(store: PageStore): void {
    const template = JSON.parse(this.dataset['template'] ?? '{}') as ProblemTemplate;
    const box = this.querySelector('input');
    const form = this.querySelector('form');
    const another = this.querySelector('[data-action="another"]');
    if (!box || !form || !another) return;
    const seed = signal(Number(this.dataset['seed'] ?? 1));
    const problem = () => drawProblem(template, store.model, seed.value, store.system.value);
    const kind = kindOf(store.model, template.answer);
    const part = (name: string) => this.querySelector(`[data-part="${name}"]`);

    this.listen(form, 'submit', (event) => {
      event.preventDefault();
      const typed = parseQuantity(box.value, kind, store.system.value);
      const because = filled(template.because, problem(), store, store.system.value);
      box.setAttribute('aria-invalid', String(!typed.ok));
      const bare = otherUnit(box.value, kind, store.system.value, problem());
      const answer = typed.ok ? reply(problem(), typed.value, because) : typed.reason;
      setText(part('reply'), bare ?? answer);
    });
    this.listen(another, 'click', () => {
      seed.value += 1;
      box.value = '';
      setText(part('reply'), '');
      this.querySelector('details')?.removeAttribute('open');
      box.focus();
    });
    this.follow(() => {
      const system = store.system.value;
      for (const name of ['ask', 'because'] as const) {
        setText(part(name), filled(template[name], problem(), store, system));
      }
      setText(this.querySelector('.unit'), unitLabel(kind, system));
    });
  }
}
