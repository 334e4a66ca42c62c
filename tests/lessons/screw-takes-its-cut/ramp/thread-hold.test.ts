import { describe, expect, it } from 'vitest';
import { screwTakesItsCut } from '../../../../src/lessons/screw-takes-its-cut/model.ts';
import { threadHold } from '../../../../src/lessons/screw-takes-its-cut/ramp/thread-hold.ts';
import { defaults, evaluated } from '../../../../src/models/define-model.ts';

const holdAt = (threadFriction: number) =>
  threadHold(evaluated(screwTakesItsCut, { ...defaults(screwTakesItsCut), threadFriction }));

describe('how surely a thread holds', () => {
  it('is in doubt between the self-locking limit and that limit with the doubt on top (`derived`)', () => {
    // Acme 1-5: lead 0.2 in, pitch diameter 0.9 in, normal flank angle about 14.5°: limit near 0.0685.
    expect(holdAt(0.06)).toBe('not');
    expect(holdAt(0.08)).toBe('barely');
    expect(holdAt(0.1)).toBe('barely');
    expect(holdAt(0.12)).toBe('firmly');
  });
});
