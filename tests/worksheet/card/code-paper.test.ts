/** A code is printed only where its modules are at least 0.4 mm. */
import { describe, expect, it } from 'vitest';
import { codePaper } from '../../../src/worksheet/card/code-paper.ts';

describe('the paper for a code', () => {
  it.each([
    [90, 'any'],
    [91, 'large'],
    [123, 'large'],
    [124, 'none'],
  ] as const)('of %i modules is %s', (size, paper) => expect(codePaper(size)).toBe(paper));
});
