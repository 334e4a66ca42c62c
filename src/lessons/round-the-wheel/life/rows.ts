/**
 * The three things that can be changed, as the figure shows them: what each is now and would be, and what that makes of
 * the band's life.
 * Units: SI in the values; text in the reader's units.
 */
import { formatQuantity } from '../../../units/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '../../../units/kinds.ts';
import { CHANGED, type Changed } from '../relative-life.ts';
import type { State } from '../state.ts';

/** One row. */
export interface LifeRow {
  readonly name: string;
  readonly sizes: string;
  /** Over today's. */
  readonly life: number;
}

const NAMES: Readonly<Record<Changed, string>> = {
  thickness: 'thickness',
  tension: 'tension',
  wheelDiameter: 'wheels',
};
const KIND: Readonly<Record<Changed, QuantityKind>> = {
  thickness: 'thickness',
  tension: 'stress',
  wheelDiameter: 'length',
};

const SAME = 5e-3; // closer to today's than two digits tell

/** A change with its sign. */
export function changeWords(change: number, system: UnitSystem): string {
  const words = formatQuantity(change, 'percent', system, { digits: 2 });
  return change > 0 ? `+${words}` : words;
}

/** A ratio of lives in words: a share of today's below it, times today's above. */
export function lifeWords(life: number, system: UnitSystem): string {
  if (Math.abs(life - 1) < SAME) return 'as today';
  const share = formatQuantity(life, 'percent', system, { digits: 2 });
  return life < 1 ? share : `${formatQuantity(life, 'ratio', system, { digits: 2 })} times`;
}

/** The rows, top down. */
export function lifeRows({ values, system }: Pick<State, 'values' | 'system'>): readonly LifeRow[] {
  const lives = {
    thickness: values.thicknessLife,
    tension: values.tensionLife,
    wheelDiameter: values.wheelLife,
  };
  return CHANGED.map((what) => {
    const say = (value: number) => formatQuantity(value, KIND[what], system, { digits: 3 });
    return {
      name: NAMES[what],
      sizes: `${say(values[what])} to ${say(values[what] * (1 + values.change))}`,
      life: lives[what],
    };
  });
}
