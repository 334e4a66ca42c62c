/** What the card says of grease, wrench and gauge where their boxes of words are empty: no more than was asked. */
import { signal } from '@preact/signals-core';
import { describe, expect, it } from 'vitest';
import type { FieldPath } from '../../../src/form/paths.ts';
import {
  gaugeWords,
  greaseWords,
  wrenchKind,
  wrenchWords,
} from '../../../src/worksheet/card/tools.ts';
import { apply, emptyProject } from '../../../src/worksheet/state/project.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { viewOf } from '../../../src/worksheet/state/view.ts';
import { plain, shown } from './invented.ts';

const THREAD = 'tensioner.friction.kind';
const COLLAR = 'tensioner.collar.kind';

function greaseOf(...chosen: readonly (readonly [FieldPath, string])[]): string {
  const project = chosen.reduce(
    (at, [path, text]) => apply(at, { do: 'type', path, text }),
    emptyProject('metric'),
  );
  return greaseWords(viewOf({ project: signal(project) }));
}

describe('the grease', () => {
  it('is what was chosen of the thread, and of what is under the nut', () => {
    expect(greaseOf([THREAD, 'greased'], [COLLAR, 'bearing'])).toBe(
      'greased or oiled; on a ball bearing',
    );
    expect(greaseOf([THREAD, 'dry'], [COLLAR, 'washer'])).toBe('dry; on a washer');
    expect(greaseOf([THREAD, 'dry'])).toBe('dry');
  });

  it('is left to the pen while the thread is not known', () => {
    expect(greaseOf()).toBe('');
    expect(greaseOf([COLLAR, 'washer'])).toBe('');
    expect(greaseOf([THREAD, 'friction'], [COLLAR, 'washer'])).toBe('');
  });
});

describe('wrench and gauge', () => {
  it('are told by how far they may be off, and how far they go', () => {
    expect(plain(wrenchWords({ wrenchClass: 0.04 }, shown))).toBe('off by up to 4 %');
    expect(plain(gaugeWords({ gaugeTop: 16e6, gaugeClass: 0.016 }, shown))).toBe(
      'to 160 bar, class 1.6',
    );
    expect(plain(gaugeWords({ gaugeTop: 16e6, gaugeClass: undefined }, shownIn('us')))).toMatch(
      /^to 23\d\d psi$|^to 2 3\d\d psi$/,
    );
  });

  it('are left to the pen where nobody said', () => {
    expect([wrenchWords({}, shown), wrenchWords(undefined, shown)]).toEqual(['', '']);
    expect(gaugeWords(undefined, shown)).toBe('');
  });
});

describe('a wrench by what its owner calls it', () => {
  it.each([
    ['click, 10 to 80 Nm, from the car shop', 'clicks'],
    ['beam type, 0-60 ft lb, old', 'shows'],
    ['3/8 drive', 'unknown'],
    ['', 'unknown'],
  ])('%s: %s', (called, kind) => expect(wrenchKind(called)).toBe(kind));
});
