/**
 * What is said where theory and measurement are apart: what is odd, and what to check, each in one line with what to do.
 * Units: SI in, the reader's out.
 */
import type { Cause, Remark } from '../../core/worksheet.ts';
import { fieldAt } from '../../form/paths.ts';
import { partNumber } from '../folds/sheet-parts.ts';
import type { Shown } from '../state/shown.ts';

type Values = Readonly<Record<string, number>>;

const unknown = Number.NaN;
const LEVER = `“${fieldAt('tensioner.advantage').label}”`;
const ROD = `“${fieldAt('tensioner.cylinder.rodDiameter').label}”`;
const IN_TENSIONER = `in part ${partNumber('tensioner')}`;
const IN_START = `in part ${partNumber('start')}`;

const isFactor = ({ factor = unknown }: Values, { number }: Shown) =>
  `a factor of ${number(factor, 3)}`;

const instead = (
  { now = unknown, low = unknown, high = unknown }: Values,
  { plain, plusMinus }: Shown,
  kind: 'length' | 'thickness',
) =>
  `${plusMinus((low + high) / 2, (high - low) / 2, kind)} would explain it; you wrote ${plain(now, kind)}.`;

const CAUSES: Readonly<Record<Cause['name'], (values: Values, shown: Shown) => string>> = {
  strands: (values, shown) =>
    `Check in part ${partNumber('mill')} what is pulled, a band round two wheels or one strip: that is ${isFactor(values, shown)}.`,
  lengthUnit: (values, shown) =>
    `Check the units of gauge length and dial: inches and millimeters are ${isFactor(values, shown)} apart.`,
  graduation: (values, shown) =>
    `Look at the dial’s face: is one graduation what you took it for? It would explain ${isFactor(values, shown)}.`,
  decimalPoint: (values, shown) =>
    `Look for a decimal point in the wrong place, in the dial, the gauge length or the thickness: ${isFactor(values, shown)}.`,
  torqueUnit: (values, shown) =>
    `Check the unit on the wrench: N·m, ft·lbf, in·lbf or kgf·m. Two of them are ${isFactor(values, shown)} apart.`,
  pressureUnit: (values, shown) =>
    `Check the unit on the gauge: bar, psi or MPa. Two of them are ${isFactor(values, shown)} apart.`,
  noLever: () => `Is there a lever at all? Without one, leave ${LEVER} empty ${IN_TENSIONER}.`,
  leverRound: () =>
    `Check ${LEVER}: is it the wrong way round? Divide the force on the wheel by the thrust.`,
  twoCylinders: (values, shown) =>
    `Count the cylinders: two on one hose push twice as hard. If there are two, write ${shown.number(values['factor'] ?? unknown)} in ${LEVER} ${IN_TENSIONER}.`,
  rodSide: () =>
    `Look where the hose goes in: on the rod’s side the oil pushes on less. If so, fill in ${ROD} ${IN_START}.`,
  noRodSide: (values, shown) =>
    `Look where the hose goes in: if it is not on the rod’s side, leave ${ROD} empty. That is ${isFactor(values, shown)}.`,
  radius: (values, shown) =>
    `Measure right across the piston: a radius typed as the diameter is ${isFactor(values, shown)}.`,
  sticking: () => 'Free the slide and clean it: one that sticks keeps force from the band.',
  piston: (values, shown) =>
    `Measure the bore of the cylinder, not its outside: ${instead(values, shown, 'length')}`,
  gauge: () =>
    'Let the pressure off: the gauge must go back to 0. Then compare it with a second gauge.',
  wrench: () =>
    'Check the wrench: which scale is set, and is an extension on it? With a spring balance, measure the handle from the screw’s center to the hook.',
  lessFriction: () =>
    'Look at thread and collar: fresh grease or a ball bearing lets more through than you told the sheet.',
  moreFriction: () => 'Look for friction: a dry thread, a dry collar, a slide that sticks.',
  clamps: () =>
    'Mark the band beside each clamp and load it again: a clamp that slips shows too little.',
  gaugeLength: (values, shown) =>
    `Measure between the clamps again: a gauge length of ${instead(values, shown, 'length')}`,
  thickness: (values, shown) =>
    `Measure the thickness again with a micrometer: ${instead(values, shown, 'thickness')}`,
  lever: ({ now = unknown, low = unknown, high = unknown }, { number, plusMinus }) =>
    now === 1
      ? 'Look for a lever between tensioner and wheel that the sheet does not know of.'
      : `Measure the lever’s arms again: ${plusMinus((low + high) / 2, (high - low) / 2, 'ratio')} in ${LEVER} would explain it; you wrote ${number(now)}.`,
};

/** One thing to check. */
export const causeSentence = ({ name, values }: Cause, shown: Shown): string =>
  CAUSES[name](values, shown);

const REMARKS: Readonly<Record<Remark['code'], (values: Values, shown: Shown) => string>> = {
  tooLittleArrives: ({ efficiency = unknown, usual = unknown }, { number, load }) =>
    load.name === 'torque'
      ? `Only ${number(100 * efficiency, 2)} % of your effort arrives. Even a dry thread on a plain washer lets ${number(100 * usual, 2)} % through, so friction there is not the whole cause.`
      : `Only ${number(100 * efficiency, 2)} % of the pressure arrives. Even a tight seal lets ${number(100 * usual, 2)} % through, so the seal is not the whole cause.`,
  tooMuchArrives: ({ efficiency = unknown, usual = unknown }, { number, load }) =>
    load.name === 'torque'
      ? `${number(100 * efficiency, 2)} % of your effort arrives. A greased thread on a ball bearing lets ${number(100 * usual, 2)} % through at most; only a ball screw passes on more.`
      : `${number(100 * efficiency, 2)} % of the pressure arrives, and no cylinder passes on more than ${number(100 * usual, 2)} %.`,
  agreesByLever: ({ advantage = unknown }, { number }) =>
    `They agree only because ${LEVER} is ${number(advantage)}. Measure the lever’s arms; never choose that number so that they agree.`,
};

/** What is odd. */
export const remarkSentence = ({ code, values }: Remark, shown: Shown): string =>
  REMARKS[code](values, shown);

/** What was measured against what is predicted, in few words. */
export function ratioWords(ratio: number, { number, load }: Shown): string {
  return `You measured ${number(ratio, 2)} times what the ${load.by} should give.`;
}
