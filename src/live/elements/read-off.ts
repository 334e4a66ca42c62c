/**
 * `<read-off data-input>`: what is drawn is read and typed, and the lesson replies to it; a button goes on to the next
 * picture. Reply and reading of units come with the first answer.
 */
import { lessonOnPage, type ReadOff } from '../../models/on-page.ts';
import { fetchedLater, NOT_ARRIVED } from '../fetched-later.ts';
import { type Parse, reading } from '../reading.ts';
import { type PageStore, quantityInput } from '../store.ts';
import { StoreElement } from './store-element.ts';
import { setText } from './value.ts';

const replies = fetchedLater(async (): Promise<readonly [ReadOff, Parse]> => {
  const readOff = lessonOnPage()?.readOff;
  if (!readOff) throw new RangeError('readOff must be on the page (was not)');
  return Promise.all([readOff(), reading.fetch()]);
});

/** A box for a reading, its reply, and the way to the next picture. */
export class ReadOffFigure extends StoreElement {
  protected bind(store: PageStore): void {
    const form = this.querySelector('form');
    const box = this.querySelector('input');
    const reply = this.querySelector('.reply');
    const picture = quantityInput(store, this.dataset['input'] ?? '');
    if (!form || !box || !reply || !picture) return;
    const say = (text: string) => setText(reply, text);
    const use = (act: (readOff: ReadOff, parse: Parse) => string) =>
      replies.use(
        ([readOff, parse]) => say(act(readOff, parse)),
        () => say(NOT_ARRIVED),
      );
    this.listen(form, 'submit', (event) => {
      event.preventDefault();
      use((readOff, parse) => {
        const values = store.values.peek();
        const typed = parse(box.value, readOff.kind, readOff.unitsOf(values));
        box.setAttribute('aria-invalid', String(!typed.ok));
        return typed.ok ? readOff.replyTo(values, typed.value) : typed.reason;
      });
    });
    this.onAction('answer', () => use((readOff) => readOff.because(store.values.peek())));
    this.onAction('next', () => {
      const { spec, value } = picture;
      value.value = value.value < spec.max ? value.value + spec.step.metric : spec.min;
      box.focus({ preventScroll: true });
    });
    this.clearWith(store, box, say);
  }

  private onAction(name: string, act: () => void): void {
    const button = this.querySelector(`[data-action="${name}"]`);
    if (button) this.listen(button, 'click', act);
  }

  /** An answer goes with the picture that it was for. */
  private clearWith(store: PageStore, box: HTMLInputElement, say: (text: string) => void): void {
    const names = (this.dataset['with'] ?? '').split(' ');
    let answered: string | undefined;
    this.follow(() => {
      const shown = names.map((name) => store.inputs[name]?.value).join(' ');
      if (answered !== undefined && answered !== shown) {
        box.value = '';
        box.removeAttribute('aria-invalid');
        say('');
      }
      answered = shown;
    });
  }
}
