/** Buttons that copy the page's address with the units in which it is shown. */
import { copied } from '../../live/clipboard.ts';
import { unitSystem } from '../../live/unit-system.ts';
import { withUnits } from './link-parts.ts';

async function copy(answer: Element | null): Promise<void> {
  const address = `${location.origin}${location.pathname}#${withUnits(location.hash, unitSystem.peek())}`;
  const say = (words: string) => answer && Object.assign(answer, { textContent: words });
  say(
    (await copied(address))
      ? 'Copied.'
      : `This browser does not let the page copy. The link is ${address}`,
  );
}

/** Gives each button its work. */
export function bindCopyButtons(page: Document): void {
  for (const button of page.querySelectorAll<HTMLElement>('[data-copy-link]'))
    button.addEventListener('click', () => void copy(button.nextElementSibling));
}
