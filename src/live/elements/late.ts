/** What comes with the first touch, as one script. */
export { ChangeOne } from './change-one.ts';
export { CheckYourself } from './check-yourself.ts';
export { bindHighlight } from './highlight.ts';
export { ShareFigure } from './share-figure.ts';
export { ShareLink } from './share-link.ts';
