/**
 * The edges of the window, held against the worked figures of the six invented mills: where what a mill shows at its
 * target is wished for, the edge is that target.
 */
import { describe, expect, it } from 'vitest';
import { smallerWheelWrap } from '../../src/core/loop/geometry.ts';
import { toothOffset } from '../../src/core/span/twist.ts';
import { stressToGrip, stressToKeepStraight, stressToPeak } from '../../src/core/tightness.ts';
import { centrifugalShare } from '../../src/core/wheel/running.ts';
import { bendingStress } from '../../src/core/wheel.ts';
import { derivedOf } from '../core/worksheet/fixtures/derived-of.ts';
import { type Mill, mills, steel } from './mills/mill.ts';
import { massOf } from './mills/running.ts';

const letters = Object.keys(mills);
const millOf = (letter: string) => mills[letter] as Mill;

describe.each(letters)('mill %s', (letter) => {
  const mill = millOf(letter);
  const { n, area, bandStiffness, supportStiffness } = mill;
  const band = { massPerLength: massOf(mill), speed: n('v') };
  const share = centrifugalShare({ bandStiffness, supportStiffness });

  it('has its target at its own slip margin', () => {
    const stress = stressToGrip({
      band,
      power: n('Pw'),
      grip: { friction: n('muw'), wrap: smallerWheelWrap(mill.wheels) },
      share,
      area,
      margin: derivedOf(letter, 'slip margin'),
    });
    expect(stress / n('target')).toBeCloseTo(1, 8);
  });

  it('has its target where 30 N move its teeth as far as worked out', () => {
    const stress = stressToKeepStraight({
      ...steel,
      width: n('body'),
      thickness: n('t'),
      span: n('guide'),
      toothOffset: toothOffset(n('W'), n('body')),
      ends: 'clamped',
      push: 30,
      movement: derivedOf(letter, 'tooth-tip deflection at 30 N (mm)') / 1e3,
    });
    expect(stress / n('target')).toBeCloseTo(1, 8);
  });

  it('has its target below its own peak', () => {
    const wheelDiameter = Math.min(n('D1'), n('D2'));
    const bent = {
      bendingStress: bendingStress({ ...steel, thickness: n('t'), wheelDiameter }),
      edgeFactor: 1.05,
      runningRise: derivedOf(letter, 'T1 tight (N)') / area - n('target'),
    };
    const peak = derivedOf(letter, 'peak stress, bending x 1.05 (MPa)') * 1e6;
    expect(stressToPeak(bent, peak) / n('target')).toBeCloseTo(1, 8);
  });
});
