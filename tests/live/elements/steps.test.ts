import { describe, expect, it } from 'vitest';
import { stiffSpring } from '../../../src/lessons/stiff-spring/model.ts';
import { stepped } from '../../../src/live/elements/steps.ts';
import { stepsOfKey } from '../../../src/live/keys.ts';
import { snapped } from '../../../src/models/define-model.ts';

const spec = stiffSpring.inputs['gaugeLength'];
if (!spec) throw new Error('the stiff spring has a gauge length');

describe('steps', () => {
  it('land on round values of the reader’s own unit', () => {
    expect(snapped(spec, 'metric', 0.3049)).toBeCloseTo(0.3, 12);
    expect(snapped(spec, 'us', 0.3049) / 0.0254).toBeCloseTo(12, 12);
  });
  it('move by one from where they stand', () =>
    expect(stepped(spec, 'us', 0.3, 1) / 0.0254).toBeCloseTo(12.5, 12));
  it('stop at the ends', () => {
    expect(stepped(spec, 'metric', 0.3, stepsOfKey('Home') ?? 0)).toBe(spec.min);
    expect(stepped(spec, 'metric', 0.3, stepsOfKey('End') ?? 0)).toBe(spec.max);
    expect(stepped(spec, 'metric', spec.max, 10)).toBe(spec.max);
  });
  it('belong to the keys that move sliders, and to no other', () => {
    expect(stepsOfKey('ArrowLeft')).toBe(-1);
    expect(stepsOfKey('PageUp')).toBe(10);
    expect(stepsOfKey('a')).toBeUndefined();
  });
});
