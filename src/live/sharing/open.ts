/** Opens and closes what a reader can share of a figure, under it. */
import { h, render } from 'preact';
import type { PageStore } from '../store.ts';
import { Panel } from './Panel.tsx';
import { sharedFigure } from './shared-figure.ts';

/** Draws the panel into its place, or takes it away again. */
export function openOrClose(
  figure: HTMLElement,
  button: Element,
  place: Element,
  store: PageStore,
): void {
  const isOpen = button.getAttribute('aria-expanded') === 'true';
  button.setAttribute('aria-expanded', String(!isOpen));
  render(isOpen ? null : h(Panel, { of: sharedFigure(figure, store) }), place);
}
