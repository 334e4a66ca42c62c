/**
 * What the plot of stress against strain and its enlarged start share: scales, ticks, and the line as it is walked. The
 * inset enlarges both ways alike, so that the line is as steep in it.
 * Units: SI in the scales (strain has no unit); drawing units otherwise.
 */
import { stressAtStrain } from '../../core/elasticity.ts';
import { linearScale, type Scale, type Tick, ticks } from '../../figures/scale.ts';
import { formatFixed } from '../../units/format-number.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { unitLabel } from '../../units/label.ts';
import { fromSi } from '../../units/si-value.ts';
import { STRIP } from './model.ts';
import type { State } from './state.ts';
import type { PlotFrame, StripLayout } from './strip-layout.ts';

const MOST_STRAIN = 0.012;
const MOST_STRESS = 1450e6;

/** A plot: its frame, how far it reaches, and its scales. */
export interface Plot extends PlotFrame {
  readonly mostStrain: number;
  readonly mostStress: number;
  readonly x: Scale;
  readonly y: Scale;
}

function plotIn(frame: PlotFrame, mostStrain: number, mostStress: number): Plot {
  const x = linearScale([0, mostStrain], [frame.left, frame.right]);
  const y = linearScale([0, mostStress], [frame.bottom, frame.top]);
  return { ...frame, mostStrain, mostStress, x, y };
}

/** The whole line, as far as the strip can be pulled. */
export function wholePlot({ plot }: StripLayout): Plot {
  return plotIn(plot, MOST_STRAIN, MOST_STRESS);
}

/** The start of the line, so much as has room at its enlargement. */
export function startPlot({ plot, inset, times }: StripLayout): Plot {
  const across = (inset.right - inset.left) / (plot.right - plot.left);
  const up = (inset.bottom - inset.top) / (plot.bottom - plot.top);
  return plotIn(inset, (MOST_STRAIN * across) / times, (MOST_STRESS * up) / times);
}

/** The strip's place on the line, held or let go. */
export function stripPlace({ values }: State) {
  const { strain, stress, leftStretch, gaugeLength, released } = values;
  return released === 'letGo'
    ? { strain: leftStretch / gaugeLength, stress: 0 }
    : { strain, stress };
}

/** Whether a plot reaches as far as the strip's place. */
export function reaches({ mostStrain, mostStress }: Plot, state: State): boolean {
  const { strain, stress } = stripPlace(state);
  return strain <= mostStrain && stress <= mostStress;
}

/** The line of the steel from nothing to a strain. */
export function steelLine({ x, y }: Plot, to: number): string {
  const bends = [0, Math.min(to, STRIP.elasticLimit / STRIP.youngsModulus), to];
  return `M${bends.map((strain) => `${x(strain)} ${y(stressAtStrain(strain, STRIP))}`).join('L')}`;
}

const inThousands = (system: UnitSystem) => system === 'us';

/** The unit of the stress ticks: with psi the numbers would be too long for a phone. */
export function stressUnit(system: UnitSystem): string {
  return `${inThousands(system) ? '1000 ' : ''}${unitLabel('stress', system)}`;
}

/** About `count` round stress ticks in that unit; nought is under the corner of the axes. */
export function stressTicks(
  { mostStress }: Plot,
  system: UnitSystem,
  count: number,
): readonly Tick[] {
  const divisor = inThousands(system) ? 1000 : 1;
  return ticks(0, mostStress, 'stress', system, count)
    .filter(({ value }) => value > 0)
    .map(({ value }) => ({
      value,
      text: formatFixed(fromSi(value, 'stress', system) / divisor, 6, true),
    }));
}
