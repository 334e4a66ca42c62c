/**
 * What can collide in a drawing, as the browser has laid it out: its sheet, its words, its grips and its lines of data.
 * Units: pixels of the screen.
 */
/** A rectangle on the screen. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A run of words on one line. */
export interface Word extends Box {
  readonly text: string;
}

/** A line of data that comes near any words, by those of its points that lie on words, x and y in turn. */
export interface Stroke {
  readonly name: string;
  readonly points: readonly number[];
}

/** A drawing in one state. */
export interface Measured {
  readonly sheet: Box;
  readonly words: readonly Word[];
  readonly grips: readonly Box[];
  readonly strokes: readonly Stroke[];
}

/** The drawings that can be seen inside an element. Runs in the page, where nothing of this file but itself is there. */
export function measureDrawings(root: Element): readonly Measured[] {
  const DATA = '.steel-line, .steel-thin, .hand-line, .hand-thin, .limit';
  const APART = 3; // px between points of a line of data
  const EMPTY = 0.15; // of the height of a line of words, above what is written and below it

  const isSeen = (node: Element) => node.getClientRects().length > 0;
  const seen = <Found extends Element>(within: Element, selector: string) =>
    [...within.querySelectorAll<Found>(selector)].filter(isSeen);
  const boxOf = (node: Element) => {
    const { left, top, right, bottom } = node.getBoundingClientRect();
    return { left, top, right, bottom };
  };

  /** Words piece by piece: a text may have pieces with places of their own. */
  const wordsOf = (svg: SVGSVGElement) => {
    const walker = document.createTreeWalker(svg, NodeFilter.SHOW_TEXT);
    const range = document.createRange();
    const words: Word[] = [];
    while (walker.nextNode()) {
      const { currentNode: node } = walker;
      range.selectNodeContents(node);
      const { left, top, right, bottom, height } = range.getBoundingClientRect();
      const text = node.textContent?.trim() ?? '';
      if (text === '' || height === 0 || !node.parentElement?.closest('text')) continue;
      words.push({ text, left, right, top: top + EMPTY * height, bottom: bottom - EMPTY * height });
    }
    return words;
  };

  const isOn = (x: number, y: number, { left, top, right, bottom }: Box) =>
    x > left && x < right && y > top && y < bottom;

  /** The points of a shape that lie on words: of some hundreds mostly none. */
  const pointsOn = (words: readonly Word[], shape: SVGGeometryElement) => {
    const matrix = shape.getScreenCTM();
    const length = shape.getTotalLength();
    if (!matrix || !(length > 0)) return [];
    const steps = Math.min(500, Math.ceil((length * Math.hypot(matrix.a, matrix.b)) / APART));
    return Array.from({ length: steps + 1 }, (_, step) => {
      const { x, y } = shape.getPointAtLength((length * step) / steps).matrixTransform(matrix);
      return words.some((word) => isOn(x, y, word)) ? [x, y] : [];
    }).flat();
  };

  /** Whether a shape's own box comes near any of the words; measuring a line point by point is slow. */
  const comesNear = (shape: Element, words: readonly Word[]) => {
    const { left, top, right, bottom } = boxOf(shape);
    return words.some(
      (word) =>
        left - APART < word.right &&
        right + APART > word.left &&
        top - APART < word.bottom &&
        bottom + APART > word.top,
    );
  };

  return seen<SVGSVGElement>(root, 'svg').map((svg) => {
    const words = wordsOf(svg);
    return {
      sheet: boxOf(svg),
      words,
      grips: seen(svg, '.handle .grip').map(boxOf),
      strokes: seen<SVGGeometryElement>(svg, DATA)
        .filter((shape) => comesNear(shape, words))
        .map((shape) => ({
          name: shape.getAttribute('class') ?? '',
          points: pointsOn(words, shape),
        })),
    };
  });
}
