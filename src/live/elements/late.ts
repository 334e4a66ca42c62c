/** What comes with the first touch, as one script. */
import { ChangeOne } from './change-one.ts';
import { CheckYourself } from './check-yourself.ts';
import { GuessFirst } from './guess-first.ts';
import { bindHighlight } from './highlight.ts';
import { OnwardLink } from './onward-link.ts';
import { ShareFigure } from './share-figure.ts';
import { ShareLink } from './share-link.ts';

/** Defines its elements, which bind to the page's store at once, and follows what is pointed at. */
export function defineLateElements(): void {
  customElements.define('guess-first', GuessFirst);
  customElements.define('check-yourself', CheckYourself);
  customElements.define('change-one', ChangeOne);
  customElements.define('onward-link', OnwardLink);
  customElements.define('share-figure', ShareFigure);
  customElements.define('share-link', ShareLink);
  bindHighlight();
}
