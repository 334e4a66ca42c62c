/** The elements that come with the first touch, as one script. */
export { CheckYourself } from './check-yourself.ts';
export { ShareFigure } from './share-figure.ts';
export { ShareLink } from './share-link.ts';
