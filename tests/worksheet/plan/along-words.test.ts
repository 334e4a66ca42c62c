/** What the sheet to take along says of the work at the band, in the reader's units and of what tightens. */
import { describe, expect, it } from 'vitest';
import { toSi } from '../../../src/units/si-value.ts';
import { clampSentence, pastStepSentence } from '../../../src/worksheet/plan/along-words.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
const plan = { readTo: 1e-5, graduation: 1e-5, firstShare: 0.1, steps: 10, series: 1 };

describe('the sheet to take along', () => {
  it.each([
    ['metric', 0.4, false, /^Set the clamps 400 mm apart\./],
    ['us', toSi(16, 'length', 'us'), false, /^Set the clamps 16 in apart\./],
    ['metric', 0.4, true, /^Clamp as far apart as your bar allows; this plan counts on 400 mm\./],
  ] as const)('says how far apart to clamp: %s, %s m, assumed %s', (system, bar, isAssumed, says) =>
    expect(
      plain(
        clampSentence(
          { plan: { ...plan, gaugeLength: bar }, barIsAssumed: isAssumed },
          shownIn(system),
        ),
      ),
    ).toMatch(says),
  );

  it('tells readings, which only go up, from a setting', () => {
    expect(pastStepSentence(shownIn('us', 'pressure'))).toContain(
      'the pressure you reached and go on',
    );
    expect(pastStepSentence(shownIn('us', 'pressure'))).not.toMatch(/torque|turn/);
    expect(pastStepSentence(shownIn('us'))).toMatch(/To set a band: slacken well below/);
  });
});
