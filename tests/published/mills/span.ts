/** The span between a mill's guides and its free strand: stiffness, twist, notes, the press. */

import { freeStrand } from '../../../src/core/loop/geometry.ts';
import { massRatio } from '../../../src/core/span/band-mass.ts';
import {
  endLength,
  flatBendingStiffness,
  lateralStiffness,
} from '../../../src/core/span/beam-under-tension.ts';
import { clampedFrequency, pinnedFrequency } from '../../../src/core/span/clamped-frequency.ts';
import { pressForce } from '../../../src/core/span/press.ts';
import {
  edgewiseStiffness,
  toothOffset,
  toothTipCompliance,
  torsionFrequency,
  twistingStiffness,
} from '../../../src/core/span/twist.ts';
import { pitchFromStress } from '../../../src/core/span.ts';
import { type Mill, type MillFigures, steel } from './mill.ts';
import { massOf } from './running.ts';

const SIDE_FORCE = 30; // N
const PRESSED = 0.005; // m

const stripOf = ({ n }: Mill) => ({
  youngsModulus: steel.youngsModulus,
  width: n('body'),
  thickness: n('t'),
});

function stiffnessFigures(mill: Mill): MillFigures {
  const { n, tension } = mill;
  const strip = stripOf(mill);
  const span = { tension, span: n('guide'), bendingStiffness: flatBendingStiffness(strip) };
  const offset = toothOffset(n('W'), n('body'));
  const { shearModulus } = steel;
  const twisted = { ...strip, tension, shearModulus, span: n('guide'), toothOffset: offset };
  const tip = toothTipCompliance({ ...twisted, ends: 'clamped' });
  return {
    'guide span (m)': n('guide'),
    '1/k end length (mm)': endLength(span) * 1e3,
    'lateral stiffness (N/mm)': lateralStiffness(span, 'clamped') / 1e3,
    'twisting stiffness (N m/rad)': twistingStiffness(twisted),
    'tooth-line offset (mm)': offset * 1e3,
    'tooth-tip stiffness (N/mm)': 1 / tip.total / 1e3,
    'tooth-tip deflection at 30 N (mm)': SIDE_FORCE * tip.total * 1e3,
    'share of it from twist': tip.twistShare,
    'edgewise stiffness (N/mm)': edgewiseStiffness({ ...twisted, ends: 'clamped' }) / 1e3,
  };
}

function noteFigures(mill: Mill): MillFigures {
  const { n, tension, area } = mill;
  const mass = massOf(mill);
  const [stress, thickness, span] = [n('target'), n('t'), n('guide')];
  const bendingStiffness = flatBendingStiffness(stripOf(mill));
  const string = { tension, massPerLength: mass, bendingStiffness, span };
  const free = { span: freeStrand(mill.wheels), ends: 'wheels' as const };
  return {
    'pitch, free strand wheel to wheel (Hz)': pitchFromStress({
      ...steel,
      ...free,
      stress,
      thickness,
      massRatio: massRatio(mass, steel.density, area),
    }),
    'pitch, guide span clamped (Hz)': clampedFrequency(string),
    'pitch, guide span pinned (Hz)': pinnedFrequency(string),
    'twisting pitch, guide span (Hz)': torsionFrequency({
      ...steel,
      stress,
      width: n('body'),
      thickness,
      span,
    }),
  };
}

function pressFigures(mill: Mill): MillFigures {
  const pressed = {
    tension: mill.tension,
    span: freeStrand(mill.wheels),
    bendingStiffness: flatBendingStiffness(stripOf(mill)),
    ends: 'wheels' as const,
    axialStiffness: steel.youngsModulus * mill.area,
    effectiveLength: mill.loop,
  };
  return { 'side force for 5 mm, free strand (N)': pressForce(pressed, PRESSED) };
}

export const spanFigures = (mill: Mill): MillFigures => ({
  ...stiffnessFigures(mill),
  ...noteFigures(mill),
  ...pressFigures(mill),
});
