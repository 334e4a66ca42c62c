/**
 * What collides in a drawing: words with words, words with a grip, words with a line of data, words with the edge of the
 * sheet. What comes closer than a pixel only touches.
 * Units: pixels of the screen.
 */
import type { Box, Measured, Stroke, Word } from './measure-drawings.ts';

/** Every collision of a drawing, in words. Runs in the page too, where nothing of this file but itself is there. */
export function collisionsIn({ sheet, words, grips, strokes }: Measured): readonly string[] {
  const TOUCHING = 1;

  /** Whether two boxes share more than a rim. */
  const overlap = (one: Box, other: Box) => {
    const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
    const down = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
    return across > TOUCHING && down > TOUCHING;
  };

  const isOff = (word: Word) => {
    const over = [
      sheet.left - word.left,
      sheet.top - word.top,
      word.right - sheet.right,
      word.bottom - sheet.bottom,
    ];
    return Math.max(...over) > TOUCHING;
  };

  /** Whether a line of data runs through words. */
  const crosses = ({ points }: Stroke, word: Word) =>
    points.some((x, place) => {
      if (place % 2 === 1) return false;
      const y = points[place + 1] ?? Number.NaN;
      const isAcross = x > word.left + TOUCHING && x < word.right - TOUCHING;
      return isAcross && y > word.top + TOUCHING && y < word.bottom - TOUCHING;
    });

  return words.flatMap((word, place) => [
    ...(isOff(word) ? [`“${word.text}” leaves the sheet`] : []),
    ...words
      .slice(place + 1)
      .filter((other) => overlap(word, other))
      .map((other) => `“${word.text}” and “${other.text}”`),
    ...(grips.some((grip) => overlap(word, grip)) ? [`“${word.text}” and a grip`] : []),
    ...strokes
      .filter((stroke) => crosses(stroke, word))
      .map(({ name }) => `“${word.text}” and a ${name}`),
  ]);
}
