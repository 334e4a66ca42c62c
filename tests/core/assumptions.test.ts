/** What is assumed and not given: each number says where it comes from, and ranges run upwards. */
import { describe, expect, it } from 'vitest';
import * as shared from '../../src/core/assumptions.ts';
import * as own from '../../src/core/worksheet/own-assumptions.ts';
import { textOf } from '../structure/project-files.ts';

const assumptions = { ...shared, ...own };

const SAID =
  /from memory|common practice, no source|by definition|derived here|`[a-z0-9-]+`, (in print|from memory)/;

const written = ['src/core/assumptions.ts', 'src/core/worksheet/own-assumptions.ts'].flatMap(
  (path) => textOf(path).split(/\n\n/).slice(1),
);

describe('each assumption', () => {
  it('is written once, with a sentence of its own', () =>
    expect(written.length).toBe(Object.keys(assumptions).length));

  it('says its source', () =>
    expect(written.filter((part) => !SAID.test(part.replaceAll(/\s*\n \* /g, ' ')))).toEqual([]));

  it('is a number, or numbers by name', () => {
    const numbers = Object.values<unknown>(assumptions).flatMap((one) =>
      typeof one === 'object' && one !== null ? Object.values(one) : [one],
    );
    expect(numbers.filter((one) => !Number.isFinite(one))).toEqual([]);
  });
});
