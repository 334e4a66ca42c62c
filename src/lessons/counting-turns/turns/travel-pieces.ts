/**
 * The travel of a nut or a piston as pieces of one bar, in the order in which they come: slack, band, frame, spring.
 * Units: m in the travels; drawing units otherwise.
 */
import type { Spring } from '../mill.ts';

/** One piece of the bar. */
export interface TravelPiece {
  readonly key: 'slack' | 'band' | 'frame' | 'spring';
  readonly name: string;
  readonly travel: number;
  readonly from: number;
  readonly to: number;
}

const SPRINGS = { none: '', discs: 'disc washers', coil: 'spring' } as const;

/** The pieces of a mill that has such a spring or none, from the left, with so many drawing units for a metre. */
export function travelPieces(
  travels: Readonly<Record<TravelPiece['key'], number>>,
  spring: Spring['kind'],
  left: number,
  scale: number,
): readonly TravelPiece[] {
  const keys = (['slack', 'band', 'frame', 'spring'] as const).filter(
    (key) => key !== 'spring' || spring !== 'none',
  );
  let from = left;
  return keys.map((key) => {
    const start = from;
    from += travels[key] * scale;
    const name = key === 'spring' ? SPRINGS[spring] : key;
    return { key, name, travel: travels[key], from: start, to: from };
  });
}
