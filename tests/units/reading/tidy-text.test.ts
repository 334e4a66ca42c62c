import { describe, expect, it } from 'vitest';
import { tidyText } from '../../../src/units/reading/tidy-text.ts';

describe('tidyText', () => {
  it.each([
    ['\u00a0 20\u202f3/4\u2009in\u200b ', '20 3/4 in'],
    ['−1', '-1'],
    ['20   \t3/4', '20 3/4'],
    ['20–3⁄4', '20-3/4'],
    ['5′ 3″', `5' 3"`],
    [`5’ 3”`, `5' 3"`],
    [`5' 3''`, `5' 3"`],
    ['20½ in', '20 1/2 in'],
    ['20 ¾', '20 3/4'],
    ['-⅜"', '-3/8"'],
    ['⅞', '7/8'],
  ])('makes %j %j', (typed, tidy) => expect(tidyText(typed)).toBe(tidy));
});
