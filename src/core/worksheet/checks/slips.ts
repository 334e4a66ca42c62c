/**
 * Slips that make measured and predicted stress differ by a factor that is known beforehand.
 * Units: factors have no unit.
 * Source: the factors by definition (units, strands, areas of a cylinder); that people make these slips, how often one
 * against another, and how thick rods are, common practice, no source.
 */
import type { Worksheet } from '../inputs.ts';
import type { ChainOperands } from '../predict/theory.ts';

/** A slip, by what was mistaken. */
export type SlipName =
  | 'strands'
  | 'lengthUnit'
  | 'graduation'
  | 'decimalPoint'
  | 'torqueUnit'
  | 'pressureUnit'
  | 'noLever'
  | 'leverRound'
  | 'twoCylinders'
  | 'rodSide'
  | 'noRodSide'
  | 'radius';

/** A slip, and what it makes of measured ÷ predicted: from `low` to `high`. */
export interface Slip {
  readonly name: SlipName;
  readonly low: number;
  readonly high: number;
}

const inch = 25.4; // mm
const barInPsi = 14.5038;
const footPoundInNewtonMetres = 1.35582;
const kilogramMetreInNewtonMetres = 9.80665;
const usualRod = { thin: 0.4, thick: 0.7 }; // of the piston's diameter: common practice, no source

const exactly = (name: SlipName, ...ratios: readonly number[]): readonly Slip[] =>
  ratios.map((ratio) => ({ name, low: ratio, high: ratio }));

/** One way round and the other. */
const eitherWay = (name: SlipName, ...ratios: readonly number[]): readonly Slip[] =>
  exactly(name, ...ratios.flatMap((ratio) => [ratio, 1 / ratio]));

/** What the section of the rod leaves of that of the piston. */
const ringShare = (rodShare: number): number => 1 - rodShare ** 2;

function ofCylinder({ pistonDiameter, rodDiameter }: Worksheet['tensioner']['cylinder']) {
  const rodShare = (rodDiameter ?? 0) / (pistonDiameter ?? Number.NaN);
  const rod: readonly Slip[] =
    rodShare > 0
      ? exactly('noRodSide', 1 / ringShare(rodShare))
      : [{ name: 'rodSide', low: ringShare(usualRod.thick), high: ringShare(usualRod.thin) }];
  return [
    ...exactly('twoCylinders', 2),
    ...rod,
    ...exactly('radius', 4),
    ...eitherWay('pressureUnit', 10, barInPsi),
  ];
}

/** Every slip that this sheet may hold, the commonest first. */
export function slipsOf(
  { tensioner }: Worksheet,
  { advantage, strandCount }: Pick<ChainOperands, 'advantage' | 'strandCount'>,
): readonly Slip[] {
  const ofDrive =
    tensioner.kind === 'cylinder'
      ? ofCylinder(tensioner.cylinder)
      : eitherWay('torqueUnit', footPoundInNewtonMetres, 12, kilogramMetreInNewtonMetres);
  const lever =
    advantage === 1
      ? []
      : [...exactly('noLever', 1 / advantage), ...exactly('leverRound', advantage ** -2)];
  return [
    ...exactly('strands', strandCount === 2 ? 2 : 1 / 2),
    ...ofDrive,
    ...lever,
    ...eitherWay('lengthUnit', inch),
    ...eitherWay('graduation', 2, inch / 10),
    ...eitherWay('decimalPoint', 10),
  ];
}
