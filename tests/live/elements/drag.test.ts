import { describe, expect, it } from 'vitest';
import { turnBetween } from '../../../src/live/elements/drag.ts';

const centre = { x: 10, y: 20 };
const at = (degrees: number) => ({
  x: centre.x + 30 * Math.cos((degrees * Math.PI) / 180),
  y: centre.y + 30 * Math.sin((degrees * Math.PI) / 180),
});

describe('turnBetween', () => {
  it.each([
    [0, 90, 90],
    [170, -170, 20],
    [-170, 170, -20],
    [10, 350, -20],
  ])('from %s to %s degrees is %s, the short way round', (from, to, turn) =>
    expect((turnBetween(at(from), at(to), centre) * 180) / Math.PI).toBeCloseTo(turn, 9),
  );
});
