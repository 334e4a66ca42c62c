/** Touching a symbol, number or control lights the same quantity in the figure, the prose, the equation, the controls. */

const nameAt = (node: EventTarget | null): string | undefined =>
  node instanceof Element ? node.closest<HTMLElement>('[data-sym]')?.dataset['sym'] : undefined;

function light(name: string | undefined): void {
  for (const node of document.querySelectorAll<HTMLElement>('[data-sym]')) {
    node.classList.toggle('lit', name !== undefined && node.dataset['sym'] === name);
  }
}

/** Follows pointer and focus over the whole page, from what they are on when this comes. */
export function bindHighlight(): void {
  light(nameAt(document.querySelector('[data-sym]:is(:hover, :focus-within)')));
  for (const type of ['pointerover', 'focusin', 'pointerdown'] as const) {
    document.addEventListener(type, (event) => light(nameAt(event.target)));
  }
}
