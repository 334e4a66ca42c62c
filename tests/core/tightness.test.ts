import { describe, expect, it } from 'vitest';
import { tensionWindow } from '../../src/core/tightness.ts';

const grip = { cause: 'grip', stress: 40e6 } as const;
const straightness = { cause: 'straightness', stress: 80e6 } as const;
const life = { cause: 'life', stress: 140e6 } as const;
const bandMaker = { cause: 'bandMaker', stress: 120e6 } as const;

describe('tensionWindow', () => {
  it('binds at the highest of the low edges and the lowest of the high ones', () =>
    expect(tensionWindow([grip, straightness], [life, bandMaker])).toEqual({
      low: straightness,
      high: bandMaker,
      isOpen: true,
    }));

  it('shuts where more is needed than is borne', () =>
    expect(tensionWindow([straightness], [{ ...bandMaker, stress: 70e6 }]).isOpen).toBe(false));

  it('shuts where nothing is enough, and where nothing is borne', () => {
    expect(tensionWindow([{ ...grip, stress: Infinity }], []).isOpen).toBe(false);
    expect(tensionWindow([], [{ cause: 'yield', stress: -1 }]).isOpen).toBe(false);
  });

  it('is open on a side without edges', () => {
    expect(tensionWindow([], [])).toEqual({ low: undefined, high: undefined, isOpen: true });
    expect(tensionWindow([grip], []).isOpen).toBe(true);
  });
});
