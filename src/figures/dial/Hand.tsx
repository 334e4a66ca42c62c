/**
 * A hand of a dial, from its tail to a fine tip: filled where the dial stands now, hollow where it stood before.
 * Units: drawing units; turns clockwise from the top.
 */

interface DialHandProps {
  readonly x: number;
  readonly y: number;
  /** To the tip. */
  readonly reach: number;
  readonly turns: number;
  readonly isBefore: boolean;
  /** Half of its width at the tail, and how far that is behind the middle. */
  readonly wide: number;
  readonly tail: number;
}

/** The hand. */
export function DialHand({ x, y, reach, turns, isBefore, wide, tail }: DialHandProps) {
  return (
    <path
      class={isBefore ? 'thin paper-fill' : 'steel-fill'}
      d={`M0 ${-reach}L${wide} ${tail}H${-wide}Z`}
      transform={`translate(${x} ${y}) rotate(${(360 * turns).toFixed(3)})`}
    />
  );
}
