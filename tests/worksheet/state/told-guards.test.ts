import { computed } from '@preact/signals-core';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { WorksheetGuard } from '../../../src/core/worksheet.ts';
import { shownIn } from '../../../src/worksheet/state/shown.ts';
import { NOTICES } from '../../../src/worksheet/words/notices.ts';

const slip: WorksheetGuard = { code: 'nearSlip', level: 'warn', values: {}, inputs: [] };
const WORDS = '../../../src/worksheet/words/guard-words.ts';
const shown = shownIn('metric');

describe('what the core wants told', () => {
  const afresh = () => {
    vi.doUnmock(WORDS);
    vi.resetModules();
  };
  beforeEach(afresh);
  afterEach(afresh); // other tests share this worker

  it('is told as soon as its words are there, to whoever asked', async () => {
    const { fetchGuardWords, toldGuards } = await import(
      '../../../src/worksheet/state/told-guards.ts'
    );
    const sentences = computed(() => toldGuards([slip], shown).map(({ sentence }) => sentence));
    expect(sentences.value).toEqual([]);
    await fetchGuardWords();
    expect(sentences.value).toEqual(['The band is close to slipping on its wheel.']);
  });

  it('is not passed over where the words do not arrive', async () => {
    vi.doMock(WORDS, () => {
      throw new Error('no network');
    });
    const { fetchGuardWords, toldGuards } = await import(
      '../../../src/worksheet/state/told-guards.ts'
    );
    await fetchGuardWords();
    expect(toldGuards([slip], shown).map(({ sentence }) => sentence)).toEqual([NOTICES.notArrived]);
  });
});
