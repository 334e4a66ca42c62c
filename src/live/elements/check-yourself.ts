/**
 * `<check-yourself>`: a question with drawn numbers, answered with a unit. A wrong answer is compared with what the
 * usual slips would have given, and the reply names the slip; a right answer in another unit is right.
 */
import { signal } from '@preact/signals-core';
import type { ProblemTemplate } from '../../models/problem.ts';
import { fetchedLater, NOT_ARRIVED } from '../fetched-later.ts';
import type { Question } from '../question.ts';
import type { PageStore } from '../store.ts';
import { StoreElement } from './store-element.ts';
import { setText } from './value.ts';

const drawing = fetchedLater(async () => (await import('../question.ts')).question);

/** One question; as the build wrote it until other numbers are asked for. */
export class CheckYourself extends StoreElement {
  protected bind(store: PageStore): void {
    const template = JSON.parse(this.dataset['template'] ?? '{}') as ProblemTemplate;
    const box = this.querySelector('input');
    const form = this.querySelector('form');
    const another = this.querySelector('[data-action="another"]');
    if (!box || !form || !another) return;
    const first = Number(this.dataset['seed'] ?? 1);
    const seed = signal(first);
    const say = (part: string, text: string) =>
      setText(this.querySelector(`[data-part="${part}"]`), text);
    const withQuestion = (act: (question: Question) => void) =>
      drawing.use(
        (question) => act(question(template, store, seed.peek())),
        () => say('reply', NOT_ARRIVED),
      );

    this.listen(form, 'submit', (event) => {
      event.preventDefault();
      withQuestion(({ replyTo }) => {
        const { isRead, reply } = replyTo(box.value);
        box.setAttribute('aria-invalid', String(!isRead));
        say('reply', reply);
      });
    });
    this.listen(another, 'click', () => {
      seed.value += 1;
      box.value = '';
      say('reply', '');
      this.querySelector('details')?.removeAttribute('open');
      box.focus();
    });
    this.follow(() => {
      if (seed.value === first) return;
      store.system.value;
      withQuestion(({ ask, because }) => {
        say('ask', ask);
        say('because', because);
        setText(document.querySelector(`[data-answer="${template.id}"]`), because); // on paper
      });
    });
  }
}
