/**
 * What to check where measured and predicted stress are apart, likeliest first: slips whose factor fits the two, then
 * what can be off by any factor, with the number that would make them agree.
 * Units: SI only (m, Pa); ratios have no unit.
 * Source: derived here from σ = adv·k·e·(x − x₀)/(s·A) and σ = E·ΔL/L₀; the order of what fits any factor, common
 * practice, no source.
 */
import { coverage } from '../../assumptions.ts';
import type { AgreementResult } from '../decide/agreement.ts';
import { isApart } from '../decide/apart.ts';
import type { EfficiencyResult } from '../decide/efficiency.ts';
import type { Worksheet } from '../inputs.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import type { PredictedResult } from '../predict/prediction.ts';
import { type Remark, worksheetRemarks } from './remarks.ts';
import { type Slip, type SlipName, slipsOf } from './slips.ts';

/** What is to be checked. */
export type CauseName =
  | SlipName
  | 'piston'
  | 'gauge'
  | 'sticking'
  | 'wrench'
  | 'lessFriction'
  | 'moreFriction'
  | 'clamps'
  | 'gaugeLength'
  | 'thickness'
  | 'lever';

/** One thing to check; `values` has the factor of a slip, or what is there `now` and what would explain the two, `low` to `high`. */
export interface Cause {
  readonly name: CauseName;
  readonly values: Readonly<Record<string, number>>;
}

/** The causes, and the ratio that they are to explain: measured over what the theory says with nothing chosen to fit it. */
export interface CausesResult {
  readonly ratio: number;
  readonly causes: readonly Cause[];
}

/** What is odd, and what to check. */
export interface Checks {
  readonly remarks: readonly Remark[]; // what is odd about screw or cylinder
  readonly causes?: CausesResult; // where the two are apart, or something is odd
}

/** What is to be explained. */
export interface Explained {
  readonly measured: Outcome<MeasuredResult>;
  readonly predicted: Outcome<PredictedResult>;
  readonly agreement: Outcome<AgreementResult>;
  readonly efficiency: Outcome<EfficiencyResult>;
}

const most = { length: 4, thickness: 1.5 } as const; // times too long or too thick: beyond that a slip is likelier

/** What is odd and what to check; nothing while all is well. */
export function worksheetChecks(worksheet: Worksheet, found: Explained): Checks {
  const remarks = worksheetRemarks(worksheet, found);
  if (!isApart(found) && remarks.length === 0) return { remarks };
  const causes = worksheetCauses(worksheet, found, remarks);
  return { remarks, ...(causes && { causes }) };
}

function worksheetCauses(
  worksheet: Worksheet,
  { measured, predicted, efficiency }: Explained,
  remarks: readonly Remark[],
): CausesResult | undefined {
  if (!measured.ready || !predicted.ready) return undefined;
  const chosen = remarks.reduce((product, { asChosen }) => product * asChosen, 1);
  const ratio = (chosen * measured.stress) / predicted.stress;
  const doubt = Math.hypot(
    measured.standardUncertainty / measured.stress,
    predicted.standardUncertainty / predicted.stress,
  );
  const isLeverChosen = remarks.some(({ code }) => code === 'agreesByLever');
  const advantage = isLeverChosen ? 1 : predicted.operands.advantage;
  const { strandCount } = predicted.operands;
  const fitting = fittingSlips(slipsOf(worksheet, { advantage, strandCount }), ratio, doubt);
  const found = { ratio, doubt };
  const lever = isLeverChosen ? [] : needed('lever', advantage, found, (times) => times);
  const isFriction = efficiency.ready && remarks.every(({ code }) => code === 'agreesByLever');
  const ofDrive =
    worksheet.tensioner.kind === 'cylinder'
      ? ofCylinder(worksheet.tensioner.cylinder, found)
      : ofScrew(ratio, isFriction);
  return { ratio, causes: [...fitting, ...ofDrive, ...ofMeasurement(worksheet, found), ...lever] };
}

/** The ratio to be explained, and its relative standard uncertainty. */
interface Found {
  readonly ratio: number;
  readonly doubt: number;
}

/** How far a ratio is from a range, in logarithms: 0 within it. */
const distance = (ratio: number, low: number, high: number): number =>
  Math.max(0, Math.log(low / ratio), Math.log(ratio / high));

/** Slips that are no farther than twice the doubt, the nearest first; of two alike the commoner one, and each once. */
function fittingSlips(slips: readonly Slip[], ratio: number, doubt: number): readonly Cause[] {
  const scored = slips
    .map(({ name, low, high }) => ({
      name,
      factor: Math.min(high, Math.max(low, ratio)),
      score: distance(ratio, low, high) / doubt,
    }))
    .filter(({ score }) => score <= coverage.factor)
    .sort((a, b) => Math.floor(a.score) - Math.floor(b.score));
  return scored
    .filter(({ name }, at) => scored.findIndex((other) => other.name === name) === at)
    .map(({ name, factor }) => ({ name, values: { factor: Math.max(factor, 1 / factor) } }));
}

const told = (name: CauseName): readonly Cause[] => [{ name, values: {} }];

/** What is there, and from where to where it would have to be: `by` tells how many times what is there at a ratio. */
function needed(
  name: CauseName,
  now: number | undefined,
  { ratio, doubt }: Found,
  by: (ratio: number) => number,
): readonly Cause[] {
  if (now === undefined) return [];
  const reach = Math.exp(coverage.factor * doubt);
  const [one = now, other = now] = [ratio / reach, ratio * reach].map((end) => now * by(end));
  return [{ name, values: { now, low: Math.min(one, other), high: Math.max(one, other) } }];
}

/** Of a screw: friction, unless no friction would explain it, and the wrench. */
const ofScrew = (ratio: number, isFriction: boolean): readonly Cause[] => [
  ...(isFriction ? told(ratio > 1 ? 'lessFriction' : 'moreFriction') : []),
  ...told('wrench'),
];

/** Of a cylinder: what sticks, its bore, its gauge. The ring D² − d² grows with the ratio. */
function ofCylinder(
  { pistonDiameter, rodDiameter = 0 }: Worksheet['tensioner']['cylinder'],
  found: Found,
): readonly Cause[] {
  const rodShare = rodDiameter / (pistonDiameter ?? Number.NaN);
  const wider = (ratio: number) => Math.sqrt(ratio * (1 - rodShare ** 2) + rodShare ** 2);
  return [
    ...(found.ratio > 1 ? [] : told('sticking')),
    ...needed('piston', pistonDiameter, found, wider),
    ...told('gauge'),
  ];
}

const isNear = (ratio: number, times: number): boolean => Math.max(ratio, 1 / ratio) <= times;

/** Of dial and section. */
function ofMeasurement({ rig, band }: Worksheet, found: Found): readonly Cause[] {
  const { ratio } = found;
  const isLength = isNear(ratio, most.length);
  const isThickness = isNear(ratio, most.thickness);
  return [
    ...(ratio > 1 ? [] : told('clamps')),
    ...(isLength ? needed('gaugeLength', rig.gaugeLength, found, (times) => times) : []),
    ...(isThickness ? needed('thickness', band.thickness, found, (times) => 1 / times) : []),
  ];
}
