/** `<live-part data-part>`: a part of the lesson whose code comes with the first press of one of its buttons. */
import type { LessonPart, PartActions } from '../../models/lesson-part.ts';
import { lessonOnPage } from '../../models/on-page.ts';
import { fetchedLater, NOT_ARRIVED } from '../fetched-later.ts';
import { type PageStore, setInput } from '../store.ts';
import { StoreElement } from './store-element.ts';

/** Binds the buttons that the build wrote. */
export class LivePart extends StoreElement {
  private readonly actions = fetchedLater<PartActions>(async () => {
    const module = await lessonOnPage()?.parts?.[`./${this.dataset['part']}.part.ts`]?.();
    return this.start((module as { readonly part: LessonPart }).part);
  });
  private store: PageStore | undefined;
  private device: AudioContext | undefined;

  protected bind(store: PageStore): void {
    this.store = store;
    this.listen(this, 'click', ({ target }) => {
      const button = (target as Element).closest<HTMLElement>('[data-action]');
      const action = button?.dataset['action'];
      if (button?.hasAttribute('data-plays')) this.openDevice();
      if (action)
        this.actions.use(
          (actions) => actions[action]?.(),
          () => this.say(NOT_ARRIVED),
        );
    });
  }

  /** A phone lets a page sound from within a press alone: the code that plays comes too late for it. */
  private openDevice(): void {
    if (!('AudioContext' in globalThis)) return;
    this.device ??= new AudioContext();
    void this.device.resume();
  }

  private say(words: string): void {
    const said = this.querySelector('[data-said]');
    if (said && said.textContent !== words) said.textContent = words; // or it is spoken again
  }

  private start(part: LessonPart): PartActions {
    const { store } = this;
    if (!store) throw new RangeError('a part must be on a page that is alive');
    return part({
      element: this,
      values: () => store.values.peek(),
      system: () => store.system.peek(),
      set: (name, value) => setInput(store, name, value),
      device: () => this.device,
      say: (words) => this.say(words),
    });
  }
}

customElements.define('live-part', LivePart); // most lessons have none, and do without this file
