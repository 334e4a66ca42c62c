/** What a plan may hold is what the plan itself takes. */
import { describe, expect, it } from 'vitest';
import { planLimits } from '../../../src/core/plan/limits.ts';
import { planOutcome } from '../../../src/core/plan.ts';

const plan = {
  gaugeLength: 0.5,
  graduation: 10e-6,
  readTo: 5e-6,
  firstShare: 0.1,
  steps: 10,
  series: 1,
  stressAtTop: 100e6,
  youngsModulus: 205e9,
};
const tried = (part: Partial<typeof plan>) => () => planOutcome({ ...plan, ...part }, 1, 1);

describe('the limits of a plan', () => {
  it.each(['steps', 'series'] as const)('are those of its %s', (name) => {
    const [fewest, most] = planLimits[name];
    expect(tried({ [name]: fewest })).not.toThrow();
    expect(tried({ [name]: fewest - 1 })).toThrow(RangeError);
    expect(tried({ [name]: most + 1 })).toThrow(RangeError);
  });
});
