import { describe, expect, it } from 'vitest';
import { worksheetChain } from '../../../../src/core/worksheet/predict/chain.ts';
import { millA } from '../fixtures/mills.ts';

describe('worksheetChain', () => {
  it('needs no reading', () => {
    const chain = worksheetChain({ ...millA, readings: [] });
    for (const outcome of Object.values(chain)) expect(outcome.ready).toBe(true);
  });

  it('breaks at the link whose box is empty, and after it', () => {
    const tensioner = { ...millA.tensioner, starts: undefined };
    const chain = worksheetChain({ ...millA, tensioner });
    expect(chain.section.ready).toBe(true);
    expect(chain.screw).toEqual({ ready: false, waitsFor: ['tensioner.starts'] });
    expect(chain.theory).toEqual(chain.screw);
  });
});
