/** The edges of the lesson's window: each is where its own cause says, and which of them bind. */
import { describe, expect, it } from 'vitest';
import { swtLifeRatio } from '../../../src/core/wheel/life.ts';
import { marginAt } from '../../../src/lessons/what-tension-buys/grip/drive-wheel.ts';
import { whatTensionBuys as model } from '../../../src/lessons/what-tension-buys/model.ts';
import { pushedSpan } from '../../../src/lessons/what-tension-buys/push/pushed-span.ts';
import { edgeText, windowText } from '../../../src/lessons/what-tension-buys/window/edge-text.ts';
import { edgesOf, windowOf } from '../../../src/lessons/what-tension-buys/window/edges.ts';
import { evaluated, type InputsOf, inputsAt } from '../../../src/models/define-model.ts';
import { bandArea } from '../../../src/models/mills/ottersleigh.ts';

const at = (inputs: Partial<InputsOf<typeof model>>) =>
  evaluated(model, inputsAt(model, inputs, 'metric'));
const causes = (inputs: Partial<InputsOf<typeof model>>) => {
  const { low, high, isOpen } = windowOf(edgesOf(at(inputs)));
  return [low?.cause, high?.cause, isOpen];
};

describe('each edge', () => {
  it('of straightness is where the push moves the teeth so far', () => {
    const { straightEdge, movement, span } = at({ span: 0.7, movement: 0.003 });
    expect(pushedSpan(straightEdge, span).teeth).toBeCloseTo(movement, 9);
  });

  it('of grip is where the slip margin is the least', () => {
    const { gripEdge, leastMargin } = at({ power: 20e3 });
    expect(marginAt(gripEdge, 20e3, 0.25)).toBeCloseTo(leastMargin, 9);
  });

  it('of life is where so much of today’s is left, after Smith, Watson and Topper', () => {
    for (const exponent of [6, 9, 12]) {
      const { lifeEdge, today, bending, rise, lifeKept } = at({ exponent });
      const amplitude = bending / 2;
      const peak = (stress: number) => ({ peak: stress + bending + rise, amplitude });
      expect(swtLifeRatio(peak(lifeEdge), peak(today), exponent)).toBeCloseTo(lifeKept, 12);
    }
  });

  it('of the mill’s maker is where two strands make the force that is allowed', () => {
    const { millEdge, millLimit } = at({ millLimit: 7000 });
    expect(2 * millEdge * bandArea).toBeCloseTo(millLimit, 9);
  });

  // 1.05 × 393.474 MPa of bending (derived, mill A); 246.34 N on 29 mm² of speed and cut, by hand
  it('of the bent steel is what is left of 0.6 × 1100 MPa', () => {
    const { yieldEdge, bending, rise } = at({});
    expect(bending / 1e6).toBeCloseTo(1.05 * 393.474, 3);
    expect(rise / 1e6).toBeCloseTo((3436.34 - 3190) / 29, 2); // derived: tight strand less strand at rest
    expect(yieldEdge / 1e6).toBeCloseTo(660 - 1.05 * 393.474 - 8.494, 2);
  });
});

describe('the window', () => {
  it('opens between straightness and life at the start, with today’s tension in it', () => {
    expect(causes({})).toEqual(['straightness', 'life', true]);
    const { lowEdge, highEdge, today } = at({});
    expect(lowEdge).toBeLessThan(today);
    expect(highEdge).toBeGreaterThan(today);
  });

  it('has other edges that bind where something else is asked', () => {
    expect(causes({ span: 0.25, power: 30e3, friction: 0.15 })[0]).toBe('grip');
    expect(causes({ millLimit: 6000 })[1]).toBe('millMaker');
  });

  it('moves its low edge down with closer guides and its high one with a higher exponent', () => {
    expect(at({ span: 0.4 }).lowEdge).toBeLessThan(at({}).lowEdge);
    expect(at({ exponent: 12 }).highEdge).toBeLessThan(at({}).highEdge);
  });

  it('shuts where the guides are far apart', () => {
    const { isOpen, lowEdge, highEdge } = at({ span: 0.9 });
    expect(isOpen).toBe(0);
    expect(lowEdge).toBeGreaterThan(highEdge);
  });
});

describe('edges as text', () => {
  it('end on a megapascal or a hundred psi, in every place alike', () => {
    const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');
    expect(plain(edgeText(64.2e6, 'metric'))).toBe('64 MPa');
    expect(plain(edgeText(137.3e6, 'metric'))).toBe('137 MPa');
    expect(plain(edgeText(64.2e6, 'us'))).toBe('9300 psi');
    expect(plain(windowText(64.2e6, 137.3e6, 'us'))).toBe('9300 to 19 900 psi');
  });
});
