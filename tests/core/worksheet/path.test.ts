import { describe, expect, it } from 'vitest';
import { knownInputs } from '../../../src/core/worksheet/known-inputs.ts';
import type { WorksheetPath } from '../../../src/core/worksheet/path.ts';

describe('WorksheetPath', () => {
  it('knows inputs, groups, rows and choices by their names', () => {
    const paths: readonly WorksheetPath[] = [
      'band.bodyWidth',
      'bands.3.thickness',
      'tensioner.collar.frictionLow',
      'tensioner.thread.pitch',
      'tensioner.thread.designation',
      'rig.dialRunsBackwards',
      'readings',
      'readings.3.dial',
      'ways.0.readings.1.wholeTurns',
    ];
    expect(new Set(paths).size).toBe(paths.length);
  });

  it('stops the type check where a name is misspelt', () => {
    const misspelt: readonly WorksheetPath[] = [
      // @ts-expect-error no such input
      'band.bodywidth',
      // @ts-expect-error a row has no such cell
      'readings.3.dail',
      // @ts-expect-error rows are numbered
      'readings.first.dial',
    ];
    // @ts-expect-error no such input
    const waiting = knownInputs({ drag: ['tensioner.dragTorqe', undefined] });
    expect(waiting).toEqual({ ready: false, waitsFor: ['tensioner.dragTorqe'] });
    expect(misspelt).toHaveLength(3);
  });
});
