/**
 * `<live-figure data-figure>`: fetches its figure's module when it comes near the screen or something changes, then draws
 * over what the build drew, in the one variant that is shown, while it is near or goes to paper; what is only near waits
 * until the values rest. Handles are bound; the finding is spoken after a second's rest.
 */
import { type ReadonlySignal, signal } from '@preact/signals-core';
import { type ComponentChild, h, hydrate, render } from 'preact';
import { FigureBody, FigureNotes } from '../../figures/FigureBody.tsx';
import type { FigureModule, FigureState } from '../../figures/figure.ts';
import { evaluated, type QuantityInput, snapped, type Values } from '../../models/define-model.ts';
import { lessonOnPage } from '../../models/on-page.ts';
import { type PageStore, quantityInput, startInputs } from '../store.ts';
import { bindHandles, type DragTarget } from './drag.ts';
import { stepped } from './steps.ts';
import { StoreElement } from './store-element.ts';

const REST_BEFORE_SPEAKING = 1000; // ms

/** The site's narrow state, followed as the window changes; before a class it is the phone's drawing that is shown large. */
const isBeforeClass = 'projector' in document.documentElement.dataset;
const small = matchMedia(isBeforeClass ? 'all' : '(max-width: 40rem)');
const narrow = signal(small.matches);
small.addEventListener('change', () => {
  narrow.value = small.matches;
});

/** Paper shows every figure, also those far from the screen. */
const printing = signal(false);
addEventListener('beforeprint', () => {
  printing.value = true;
});
addEventListener('afterprint', () => {
  printing.value = false;
});

/** Fetches a figure of the page's lesson; where it does not arrive, what the build drew stays. */
async function figureNamed(name: string): Promise<FigureModule | undefined> {
  const loaded = await lessonOnPage()
    ?.figures[`./${name}.figure.tsx`]?.()
    .catch(() => undefined);
  return (loaded as { readonly figure: FigureModule } | undefined)?.figure;
}

/** Whether anything stands otherwise than the build drew it. */
function isChanged(store: PageStore): boolean {
  const { inputs, system, guess } = store;
  const start: Values = startInputs(store, system.value);
  const isMoved = Object.entries(inputs).some(([name, { value }]) => value !== start[name]);
  return isMoved || guess.value !== undefined;
}

/** What a handle may do: move its input along the steps of the present unit system. */
function dragTarget(store: PageStore): DragTarget {
  const { system } = store;
  const change = (name: string, next: (spec: QuantityInput, now: number) => number) => {
    const input = quantityInput(store, name);
    if (input) input.value.value = next(input.spec, input.value.value);
  };
  return {
    read: (name) => quantityInput(store, name)?.value.value ?? Number.NaN,
    write: (name, value) => change(name, (spec) => snapped(spec, system.value, value)),
    step: (name, steps) => change(name, (spec, now) => stepped(spec, system.value, now, steps)),
  };
}

/** The state in which the build drew this variant. */
function built(store: PageStore, state: FigureState): FigureState {
  const values = evaluated(store.model, startInputs(store, state.system));
  return { ...state, values, guess: undefined };
}

/** A figure that answers to the page's store. */
export class LiveFigure extends StoreElement {
  private readonly adopted = new WeakSet<HTMLElement>();
  private speaking: ReturnType<typeof setTimeout> | undefined;

  protected bind(store: PageStore): void {
    const near = this.near();
    let isAsked = false;
    this.follow(() => {
      if (isAsked || !(near.value || isChanged(store))) return;
      isAsked = true;
      void this.draw(store, near);
    });
  }

  private async draw(store: PageStore, near: ReadonlySignal<boolean>): Promise<void> {
    const figure = await figureNamed(this.dataset['figure'] ?? '');
    if (!figure || !this.isConnected) return;
    const release = new AbortController();
    bindHandles(this, dragTarget(store), release.signal);
    this.onRelease(() => release.abort());
    const values = this.valuesOf(store);
    this.follow(() => {
      if (printing.value) this.paint(store, figure, store.values.value);
      else if (near.value) this.paint(store, figure, values.value);
    });
  }

  private paint(store: PageStore, figure: FigureModule, values: Values): void {
    const system = store.system.value;
    const isNarrow = narrow.value && !printing.value; // paper is wide, whatever prints
    const width = isNarrow ? 'narrow' : 'wide';
    const part = (name: string) =>
      this.querySelector<HTMLElement>(`.${name}.variant-${width}.q-${system}`);
    const body = part('body');
    const notes = part('notes');
    if (!body || !notes) return;
    const state = {
      values,
      system,
      narrow: isNarrow,
      idPrefix: body.dataset['prefix'] ?? '',
      guess: store.guess.value,
    };
    this.adopt(body, () => h(FigureBody, { figure, state: built(store, state) }));
    this.adopt(notes, () => h(FigureNotes, { figure, state: built(store, state) }));
    render(h(FigureBody, { figure, state }), body);
    render(h(FigureNotes, { figure, state }), notes);
    this.speakLater(figure.finding(state));
  }

  /** Takes over what the build drew, node by node, so that nothing under a finger or in focus is replaced. */
  private adopt(part: HTMLElement, drawing: () => ComponentChild): void {
    if (this.adopted.has(part)) return;
    this.adopted.add(part);
    hydrate(drawing(), part);
  }

  /** One polite sentence after a second without change; never on every tick, never on load. */
  private speakLater(text: string): void {
    const status = this.querySelector('[role="status"]');
    clearTimeout(this.speaking);
    const isFirst = this.dataset['said'] === undefined;
    if (isFirst) this.dataset['said'] = text;
    if (isFirst || !status) return;
    this.speaking = setTimeout(() => {
      status.textContent = text;
    }, REST_BEFORE_SPEAKING);
  }
}
