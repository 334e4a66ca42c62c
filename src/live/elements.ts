/** Defines the live elements; apart from their classes, so that tests import those without side effects. */
import { CheckYourself } from './check-yourself.ts';
import { GuessFirst } from './guess-first.ts';
import { bindHighlight } from './highlight.ts';
import { LiveEquation } from './live-equation.ts';
import { LiveFigure } from './live-figure.ts';
import { LiveInput } from './live-input.ts';
import { LiveValue } from './live-value.ts';
import { ShareLink } from './share-link.ts';

customElements.define('live-value', LiveValue);
customElements.define('live-equation', LiveEquation);
customElements.define('live-input', LiveInput);
customElements.define('live-figure', LiveFigure);
customElements.define('guess-first', GuessFirst);
customElements.define('check-yourself', CheckYourself);
customElements.define('share-link', ShareLink);
bindHighlight();
