/** The looks that a page has: what a theme can change of words and of what is pressed, one element of each. */

/** One element of each look: of one kind, in the same ink, as large and as bold, on the same grounds. Runs in the page. */
export function oneOfEachLook(): readonly Element[] {
  const PRESSED = 'a[href], button, input, select, textarea, summary';

  const NOTHING = 'rgba(0, 0, 0, 0) none 1 none';

  const grounds = new Map<Element, string>();
  /** All that lies under an element's words, from the sheet up. */
  const groundOf = (element: Element): string => {
    const known = grounds.get(element);
    if (known !== undefined) return known;
    const { backgroundColor, backgroundImage, opacity, filter } = getComputedStyle(element);
    const own = `${backgroundColor} ${backgroundImage} ${opacity} ${filter}`;
    const under = element.parentElement ? groundOf(element.parentElement) : '';
    const all = own === NOTHING ? under : `${under}|${own}`;
    grounds.set(element, all);
    return all;
  };

  const hasWords = ({ childNodes }: Element) =>
    [...childNodes].some((node) => node instanceof Text && node.data.trim() !== '');
  const lookOf = (element: Element) => {
    const { color, fill, fontSize, fontWeight, textDecorationLine } = getComputedStyle(element);
    const ink = `${color} ${fill} ${fontSize} ${fontWeight} ${textDecorationLine}`;
    const kind = `${element.tagName} ${element.getAttribute('class')}`;
    return `${kind} in ${element.parentElement?.tagName} ${ink} on ${groundOf(element)}`;
  };

  const looks = new Map<string, Element>();
  for (const element of document.body.querySelectorAll('*')) {
    if (!hasWords(element) && !element.matches(PRESSED)) continue;
    if (!element.checkVisibility({ visibilityProperty: true })) continue;
    const look = lookOf(element);
    if (!looks.has(look)) looks.set(look, element);
  }
  return [...looks.values()];
}
