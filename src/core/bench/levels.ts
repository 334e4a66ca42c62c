/**
 * The mill of a seed at a level of practice: what its owner tells, and one thing that goes wrong, or all of them.
 * Units: SI only (m, N·m, Pa, K).
 * Source: definition; the sizes, common practice, no source.
 */
import { type RandomSource, randomSource } from '../random.ts';
import { thread } from '../threads.ts';
import { type BenchMill, benchMill, chooser, type HiddenMill, type KnownMill } from './mill.ts';
import { benchStress } from './series.ts';

/** From clean to nasty: each adds one thing to the clean one, the last has them all. */
export const benchLevels = [
  'clean',
  'drag',
  'warming',
  'slipping',
  'toe',
  'worn',
  'nasty',
] as const;

/** One of them. */
export type BenchLevel = (typeof benchLevels)[number];

/** What the owner tells before anything is tried. */
export interface ToldMill {
  readonly bodyWidth: number; // m, of the band when it was new
  readonly thickness: number; // m, of the band when it was new
  readonly teeth: number; // m, by which the width over the teeth is more than that of the body
  readonly washer: { readonly outer: number; readonly inner: number }; // m, of the ring that rubs or rolls
  readonly dragTorque: number | undefined; // N·m, as the owner found it; undefined: never tried
  readonly usualTorque: number; // N·m, to which the owner tightens
  readonly mostTorque: number; // N·m, that the maker of the mill allows
  readonly runsBackwards: boolean; // the hand of the dial, as the band stretches
}

/** A mill at a level; `known` is what careful measuring finds. */
export interface LevelMill extends BenchMill {
  readonly level: BenchLevel;
  readonly told: ToldMill;
}

const LEVEL_SEEDS = 2 ** 52; // beyond those of every series
const MOST_STRESS = 150e6; // Pa, at the torque that the maker allows
const CLEARANCE = 1e-3; // m, of the washer's hole over the thread, about
const HOLE = 0.5e-3; // m, the step of the sizes of such holes
const TOLD_DRAG = 0.1; // N·m, the step to which the owner says it
const DIALS = [
  { dialStep: 5e-6, dialTurn: 1e-3 }, // 0.01 mm marks, read to the half
  { dialStep: 12.7e-6, dialTurn: 2.54e-3 }, // 0.001 in marks, read to the half
] as const;

/** All that may go wrong, drawn for every level, so that the nasty one has what the single ones have. */
function drawn(source: RandomSource) {
  const { between, among, size } = chooser(source);
  return {
    dial: among(DIALS),
    runsBackwards: among([true, true, false]),
    teeth: size(5e-3, 8e-3, 0.5e-3),
    usualStress: between(100e6, 125e6),
    dragTorque: between(2.5, 4),
    barWarming: between(2, 4),
    slipChance: 0.12,
    toe: {
      coilShift: among([1, -1]) * between(150e-6, 300e-6),
      coilStress: between(11e6, 17e6),
    },
    wear: { bodyWidth: size(2e-3, 4e-3, 0.5e-3), thickness: size(0.04e-3, 0.1e-3, 0.01e-3) },
  };
}

type Drawn = ReturnType<typeof drawn>;

const rounded = (value: number, step: number) => step * Math.round(value / step);

/** Whether a level has one of the things that go wrong. */
const has = (level: BenchLevel, one: BenchLevel) => level === one || level === 'nasty';

function hiddenAt(hidden: HiddenMill, level: BenchLevel, all: Drawn): HiddenMill {
  return {
    ...hidden,
    slipChance: has(level, 'slipping') ? all.slipChance : 0,
    ...(has(level, 'drag') && { dragTorque: all.dragTorque }),
    ...(has(level, 'warming') && { barWarming: all.barWarming }),
    ...(has(level, 'toe') && all.toe),
  };
}

function knownAt(known: KnownMill, level: BenchLevel, { dial, wear }: Drawn): KnownMill {
  const { bodyWidth, thickness } = has(level, 'worn') ? wear : { bodyWidth: 0, thickness: 0 };
  return {
    ...known,
    ...dial,
    bodyWidth: known.bodyWidth - bodyWidth,
    thickness: known.thickness - thickness,
  };
}

function washerOf({ screwThread, collarDiameter }: KnownMill): ToldMill['washer'] {
  const inner = rounded(thread(screwThread).majorDiameter + CLEARANCE, HOLE);
  return { inner, outer: 2 * collarDiameter - inner };
}

/**
 * The mill of a seed at a level. It is that of `benchMill`, with another dial and what the level changes.
 * @throws RangeError unless seed is whole, 0 to 2³² − 1
 */
export function benchMillAt(seed: number, level: BenchLevel): LevelMill {
  const asDrawn = benchMill(seed);
  const all = drawn(randomSource(LEVEL_SEEDS + seed));
  const hidden = hiddenAt(asDrawn.hidden, level, all);
  const mill = { seed, hidden, known: knownAt(asDrawn.known, level, all) };
  const perTorque = benchStress(mill, hidden.dragTorque + 1);
  return {
    ...mill,
    level,
    told: {
      bodyWidth: asDrawn.known.bodyWidth,
      thickness: asDrawn.known.thickness,
      teeth: all.teeth,
      washer: washerOf(mill.known),
      dragTorque: has(level, 'drag') ? undefined : rounded(hidden.dragTorque, TOLD_DRAG),
      usualTorque: Math.round(hidden.dragTorque + all.usualStress / perTorque),
      mostTorque: Math.floor(hidden.dragTorque + MOST_STRESS / perTorque),
      runsBackwards: all.runsBackwards,
    },
  };
}
