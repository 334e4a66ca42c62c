/** What the worked examples say in words, where no number can say it: which is more, what holds, what comes back. */
import { describe, expect, it } from 'vitest';
import { told } from './all-examples.ts';

describe('what an example says in words is so:', () => {
  it.each<[string, () => boolean]>([
    [
      'grease tightens the band at the same torque',
      () =>
        told('greased-screw', 'greased', 'stress') > 1.5 * told('greased-screw', 'dry', 'stress'),
    ],
    [
      'a ball bearing lets the steep screw go, a plain collar holds it',
      () =>
        told('ball-bearing', 'ball', 'looseningTorque') < 0 &&
        told('ball-bearing', 'plain', 'looseningTorque') > 0,
    ],
    [
      'one start holds by itself',
      () =>
        told('ball-bearing', 'plain', 'holds') === 0 &&
        told('ball-bearing', 'changed', 'holds') === 1,
    ],
    [
      'the same turns on a dry thread leave the same stress',
      () => told('dried-thread', 'changed', 'stress') === told('dried-thread', 'oiled', 'stress'),
    ],
    [
      'closer guides help more than half as much tension again',
      () => told('wavy-boards', 'closer', 'teeth') < told('wavy-boards', 'tighter', 'teeth'),
    ],
    [
      'a clean rim helps more than half as much tension again',
      () => told('wet-band-slips', 'clean', 'margin') > told('wet-band-slips', 'tighter', 'margin'),
    ],
    [
      'the thicker band loses by any usual exponent',
      () =>
        told('stronger-band', 'mild', 'thicknessLife') < 1 &&
        told('stronger-band', 'harsh', 'thicknessLife') < 1,
    ],
    [
      'a longer bar and three series beat a finer dial',
      () =>
        Math.max(told('finer-dial', 'long', 'whole'), told('finer-dial', 'three', 'whole')) <
        told('finer-dial', 'finer', 'whole'),
    ],
    [
      'wood shows stress that is not there, steel none',
      () =>
        told('wood-in-the-sun', 'sun', 'feignedStress') > 0 &&
        told('wood-in-the-sun', 'changed', 'feignedStress') === 0,
    ],
    [
      'the dry thread does not agree, the oiled one does',
      () =>
        told('dry-or-not', 'believed', 'lineAgreement') > 1 &&
        Math.abs(told('dry-or-not', 'changed', 'lineAgreement')) < 1,
    ],
    [
      'the efficiency that he took is below the range of the readings',
      () => told('dry-or-not', 'believed', 'efficiency') < told('dry-or-not', 'believed', 'ownLow'),
    ],
    [
      'at dusk the band is tighter than it was set',
      () =>
        told('slack-by-lunch', 'changed', 'duskStress') >
        told('slack-by-lunch', 'changed', 'setting'),
    ],
  ])('%s', (_, isSo) => expect(isSo()).toBe(true));
});
