/** Worked examples of stretch: rods, tubes, a nut turned against a sleeve. */
import { elongation, poissonChange, strain } from '../../../src/core/elasticity.ts';
import { strandStress } from '../../../src/core/section.ts';
import { seriesStiffness, wheelTravelPerTurn } from '../../../src/core/turns.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, type PublishedCase } from '../cases.ts';

const disc = (diameter: number): number => (Math.PI / 4) * diameter ** 2;

function rod(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const stress = strandStress(n('m_kg') * n('g'), n('A_m2'));
  const stretch = elongation({ stress, youngsModulus: n('Y_Pa'), gaugeLength: n('L0_m') }) * 1e3;
  return [
    printed('stress_Pa', 'stress', 'Pa', stress, { absolute: 5e6 }),
    printed('elongation_mm', 'stretch', 'mm', stretch, { absolute: 0.05 }),
    recomputed('stress_Pa', 'stress', 'Pa', stress, 1e-12),
    recomputed('elongation_mm', 'stretch', 'mm', stretch, 1e-12),
  ];
}

/** The book rounds the mass of the stone to 1600 kg on its way, hence its own 1 %. */
function pillar(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const [area, youngsModulus] = [n('A_m2'), n('Y_Pa')];
  const kilopascals = (mass: number) =>
    strandStress(n('w_sculpture_N') + mass * n('g'), area) / 1e3;
  const stress = kilopascals(n('rho') * area * n('h_m'));
  const share = elongation({ stress: stress * 1e3, youngsModulus, gaugeLength: 1 });
  return [
    printed('stress_kPa', 'stress', 'kPa', stress, { relative: 0.01 }),
    printed('strain', 'strain', '', share, { relative: 0.01 }),
    recomputed('stress_kPa', 'stress', 'kPa', stress, 1e-12),
    recomputed('strain', 'strain', '', share, 1e-12),
    recomputed('stress_kPa_with_printed_mass_1600kg', 'stress', 'kPa', kilopascals(1600), 1e-12),
  ];
}

function post(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const stress = strandStress(n('P_lbf'), disc(n('d2_in')) - disc(n('d1_in')));
  const share = strain({ elongation: n('delta_in'), gaugeLength: n('L_in') });
  return [
    printed('stress_psi', 'stress', 'psi', stress, { absolute: 0.5 }),
    printed('strain', 'strain', '', share, { decimals: 6 }),
    recomputed('stress_psi', 'stress', 'psi', stress, 1e-12),
    recomputed('strain', 'strain', '', share, 1e-12),
  ];
}

function pipe(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const area = disc(n('d2_in')) - disc(n('d1_in'));
  const [stress, youngsModulus] = [-n('P_kip') / area, n('E_ksi')]; // ksi
  const shortening = elongation({ stress, youngsModulus, gaugeLength: 12 * n('L_ft') });
  const across = (size: number) =>
    poissonChange({ stress, youngsModulus, poissonsRatio: n('nu'), size });
  const wall = (n('d2_in') - n('d1_in')) / 2;
  return [
    printed('shortening_in', 'shortening', 'in', shortening, { decimals: 3 }),
    printed('lateralStrain', 'strain across', '', across(1), { decimals: 10 }),
    printed('innerDiameterIncrease_in', 'growth of the bore', 'in', across(n('d1_in')), {
      decimals: 6,
    }),
    printed('wallIncrease_in', 'growth of the wall', 'in', across(wall), { decimals: 6 }),
    recomputed('shortening_in', 'shortening', 'in', shortening, 1e-9),
    recomputed('lateralStrain', 'strain across', '', across(1), 1e-9),
  ];
}

function compositeBar(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const force = n('P_kN') * 1e3;
  const stretch = (key: string, area: number) =>
    elongation({
      stress: strandStress(force, area), // MPa, as the lengths are in mm
      youngsModulus: n(`${key} > E_GPa`) * 1e3,
      gaugeLength: n(`${key} > L_mm`),
    });
  const both =
    stretch('steelRod', disc(n('steelRod > d_mm'))) +
    stretch('aluminiumTube', n('aluminiumTube > A_mm2'));
  return [
    printed('displacement_mm', 'movement of the end', 'mm', both, { absolute: 0.05 }),
    recomputed('displacement_mm', 'movement of the end', 'mm', both, 1e-9),
  ];
}

/** A bolt against a sleeve is a screw against band and frame: two springs in series. */
function halfTurn(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const bolt = disc(2 * n('bolt > r_in'));
  const tube = disc(2 * n('tube > ro_in')) - disc(2 * n('tube > ri_in'));
  const spring = (modulus: number, area: number) => (modulus * area) / n('L_in'); // kip/in
  const both = seriesStiffness([spring(n('bolt > E_ksi'), bolt), spring(n('tube > E_ksi'), tube)]);
  const force = n('turns') * wheelTravelPerTurn({ lead: 1 / n('threadsPerInch') }) * both;
  const [inBolt, inTube] = [strandStress(force, bolt), strandStress(force, tube)];
  const within = { absolute: 0.1 };
  return [
    printed('F_kip', 'force after half a turn', 'kip', force, { absolute: 0.005 }),
    printed('boltStress_ksi', 'stress in the bolt', 'ksi', inBolt, within),
    printed('tubeStress_ksi', 'stress in the tube', 'ksi', inTube, within),
    recomputed('F_kip', 'force after half a turn', 'kip', force, 1e-9),
    recomputed('boltStress_ksi', 'stress in the bolt', 'ksi', inBolt, 1e-9),
    recomputed('tubeStress_ksi', 'stress in the tube', 'ksi', inTube, 1e-9),
  ];
}

export const elasticityAnswers: Answers = {
  'openstax-u-stretching-a-rod': rod,
  'openstax-u-pillar': pillar,
  'gere-1-1-post': post,
  'gere-1-3-pipe-poisson': pipe,
  'hibbeler-4-2-composite-bar': compositeBar,
  'hibbeler-4-8-half-turn-of-a-nut': halfTurn,
};
