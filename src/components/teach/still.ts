/** A drawing without what only a screen can do with it: its grips are drawn, but they are no controls. */

const CONTROL = / (role="slider"|tabindex="0"|aria-(label|value\w+)="[^"]*"|data-[a-z-]+="[^"]*")/g;

/** The SVG of a figure, its grips no longer in the way of the keyboard or of who listens. */
export const still = (html: string): string =>
  html.replace(/<g class="handle"[^>]*>/g, (tag) =>
    tag.replace(CONTROL, '').replace('>', ' aria-hidden="true">'),
  );
