/** A mill at rest, as figures in the units that the names give. Three only show an input again. */

import { apparentStressThermal, stressDrift } from '../../../src/core/drift.ts';
import { elongation } from '../../../src/core/elasticity.ts';
import { bandStiffnessLocked } from '../../../src/core/loop/band-stiffness.ts';
import { freeStrand, smallerWheelWrap } from '../../../src/core/loop/geometry.ts';
import { seriesStiffness } from '../../../src/core/turns.ts';
import { inDegrees, type Mill, type MillFigures, steel } from './mill.ts';

/** Stress lost while the band warms by 15 °C and nothing else does. */
function warmFigures(mill: Mill): MillFigures {
  const { n, area, loop } = mill;
  const cool = { expansion: steel.expansion, temperatureChange: 0 };
  const warm = {
    bandStiffness: mill.bandStiffness,
    supportStiffness: mill.supportStiffness,
    strandHalfAngle: mill.halfAngle,
    band: { expansion: steel.expansion, temperatureChange: 15, loopLength: loop },
    frame: { ...cool, centreDistance: n('C') },
    wheels: { ...cool, diameter: (n('D1') + n('D2')) / 2 },
  };
  const rigid = { ...warm, supportStiffness: Number.POSITIVE_INFINITY };
  const both = apparentStressThermal({
    youngsModulus: steel.youngsModulus,
    band: { expansion: steel.expansion, temperatureChange: 3 },
    bar: { expansion: n('abar'), temperatureChange: 3 },
  });
  return {
    'stress change, band +15 K, this support (MPa)': stressDrift(warm, area) / 1e6,
    'same, rigid support (MPa)': stressDrift(rigid, area) / 1e6,
    'false stress, band and bar +3 K (MPa)': both / 1e6,
  };
}

export function stillFigures(mill: Mill): MillFigures {
  const { n, area, halfAngle, wheels } = mill;
  const strand = freeStrand(wheels);
  const stretch = elongation({
    stress: n('target'),
    youngsModulus: steel.youngsModulus,
    gaugeLength: n('L0'),
  });
  const total = seriesStiffness([mill.bandStiffness, mill.supportStiffness]);
  return {
    'A_body (mm^2)': area * 1e6,
    'beta (deg)': inDegrees(halfAngle),
    'L loop (m)': mill.loop,
    's free strand (m)': strand,
    'target sigma (MPa)': n('target') / 1e6,
    'T strand (N)': mill.tension,
    'Fw wheel (N)': mill.wheelForce,
    'expected dial dL (um)': stretch * 1e6,
    'k_band at wheel (MN/m)': mill.bandStiffness / 1e6,
    // The file's name for it; it is the bound for a band that does not slip on its wheels at all.
    'k_band before rolling the band round (MN/m)':
      bandStiffnessLocked({ ...steel, area }, strand, halfAngle) / 1e6,
    'k_frame (MN/m)': n('kf') / 1e6,
    'k_support = frame + spring (MN/m)': mill.supportStiffness / 1e6,
    'k_total at wheel (MN/m)': total / 1e6,
    'wrap, smaller wheel (deg)': inDegrees(smallerWheelWrap(wheels)),
    ...warmFigures(mill),
  };
}
