/**
 * The project's own constants against printed ones: Young's modulus, which a new worksheet takes as a middle
 * and a half-width, and thermal growth, read off what the worksheet makes of 1 °C and 3 °C.
 */
import { emptyWorksheet } from '../../../src/core/worksheet/empty.ts';
import { worksheetStressScale } from '../../../src/core/worksheet/measure/stress.ts';
import { siValue } from '../../../src/units/conversions.ts';
import { UNITS } from '../../../src/units/reading/table.ts';
import { type Answer, type Answers, printed, recomputed, type Within } from '../answer.ts';

const { youngsModulus = Number.NaN, youngsModulusHalfWidth = Number.NaN } = emptyWorksheet.band;
const million = siValue(1, UNITS.Mpsi.factor);

/** Ours must lie within our own half-width of the printed one, plus half of its last digit. */
const modulus = (
  key: string,
  quantity: string,
  unit: string,
  size: number,
  digit: number,
): Answer =>
  printed(key, quantity, unit, youngsModulus / size, {
    absolute: youngsModulusHalfWidth / size + digit / 2,
  });

/** Thermal growth of a bar of wood, 1/K: three degrees together stretch steel and wood apart by so much. */
function growthOfWood(): number {
  const rig = {
    ...emptyWorksheet.rig,
    gaugeLength: 0.5,
    graduation: 1e-5,
    barMaterial: 'wood' as const,
  };
  const scale = worksheetStressScale({ ...emptyWorksheet, rig });
  if (!scale.ready) throw new Error('the scale of an ordinary rig is not ready');
  return scale.warmthApart.halfWidth - scale.warmthTogether.halfWidth / 3;
}

const steel = "Young's modulus of steel";

export const materialAnswers: Answers = {
  'en1993-steel': () => [modulus('E_MPa', steel, 'MPa', 1e6, 1)],
  'openstax-moduli': () => [
    modulus('universityPhysics > E_GPa > steel', steel, 'GPa', 1e9, 1),
    modulus('collegePhysics > E_GPa > steel', steel, 'GPa', 1e9, 1),
  ],
  'spring-wire-moduli': () => [
    modulus('E_Mpsi > musicWire', "Young's modulus of music wire", 'Mpsi', million, 1),
    modulus('E_Mpsi > chromeSteel', "Young's modulus of chrome steel", 'Mpsi', million, 1),
    modulus(
      'E_Mpsi > siliconManganese',
      "Young's modulus of silicon-manganese steel",
      'Mpsi',
      million,
      1,
    ),
    recomputed('E_GPa > musicWire', '29 Mpsi', 'GPa', siValue(29, UNITS.Mpsi.factor) / 1e9, 1e-9),
    recomputed(
      'E_GPa > hardDrawnSteel',
      '28.5 Mpsi',
      'GPa',
      siValue(28.5, UNITS.Mpsi.factor) / 1e9,
      1e-9,
    ),
  ],
  'shigley-a5': () => [
    modulus('carbonSteel > E_Mpsi', "Young's modulus of carbon steel", 'Mpsi', million, 1),
    modulus('carbonSteel > E_GPa', "Young's modulus of carbon steel", 'GPa', 1e9, 1),
    recomputed('30Mpsi_in_GPa', '30 Mpsi', 'GPa', siValue(30, UNITS.Mpsi.factor) / 1e9, 1e-9),
    recomputed('10.4Mpsi_in_GPa', '10.4 Mpsi', 'GPa', siValue(10.4, UNITS.Mpsi.factor) / 1e9, 1e-9),
    recomputed(
      'rho_from_0.282',
      '0.282 lb/in³',
      'kg/m³',
      siValue(0.282, UNITS['lb/in³'].factor),
      1e-9,
    ),
  ],
  'wood-along-grain-expansion': () => {
    const within: Within = { absolute: 1.4e-6 }; // the width of the range: near to both ends is inside
    const quantity = 'thermal growth of wood along the grain';
    return [
      printed('alpha_parallel_per_K > 0', `${quantity}, low`, '1/K', growthOfWood(), within),
      printed('alpha_parallel_per_K > 1', `${quantity}, high`, '1/K', growthOfWood(), within),
    ];
  },
};
