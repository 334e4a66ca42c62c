/** Buttons that print the page or one part of it. */

const PART = '[data-print-part]';

/** Prints one part of the page, the others left out for as long as that takes; the whole page where no part is named. */
function printPart(page: Document, name: string): void {
  const others = [...page.querySelectorAll<HTMLElement>(PART)].filter(
    ({ dataset }) => name !== '' && dataset['printPart'] !== name,
  );
  for (const other of others) other.classList.add('no-print');
  addEventListener(
    'afterprint',
    () => {
      for (const other of others) other.classList.remove('no-print');
    },
    { once: true },
  );
  print();
}

/** Gives each button its work. */
export function bindPrintButtons(page: Document): void {
  for (const button of page.querySelectorAll<HTMLElement>('[data-print]')) {
    button.addEventListener('click', () => printPart(page, button.dataset['print'] ?? ''));
  }
}
