/** Touching a symbol, number or control lights the same quantity in the figure, the prose, the equation, the controls. */

function nameAt(event: Event): string | undefined {
  const found =
    event.target instanceof Element ? event.target.closest<HTMLElement>('[data-sym]') : null;
  return found?.dataset['sym'];
}

function light(name: string | undefined): void {
  for (const node of document.querySelectorAll<HTMLElement>('[data-sym]')) {
    node.classList.toggle('lit', name !== undefined && node.dataset['sym'] === name);
  }
}

/** Follows pointer and focus over the whole page. */
export function bindHighlight(): void {
  for (const type of ['pointerover', 'focusin', 'pointerdown'] as const) {
    document.addEventListener(type, (event) => light(nameAt(event)));
  }
}
