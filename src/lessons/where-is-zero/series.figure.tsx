/**
 * A series on the practice bench in which the reader places zero by eye, then the classroom rule, then all readings
 * together, with the truth that only the bench knows.
 * Units: SI in the state; drawing units are pixels of the viewBox.
 */
import { dialRepeatability } from '../../core/assumptions.ts';
import { Sheet } from '../../figures/Sheet.tsx';
import { teller } from '../../figures/teller.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { whereIsZero } from './model.ts';
import { seriesLayout } from './series/layout.ts';
import { readingsOf } from './series/of-state.ts';
import { ReadingsPlot } from './series/ReadingsPlot.tsx';
import { Zeros } from './series/Zeros.tsx';
import type { Figure, State } from './state.ts';

const HALF_A_STEP = 0.5e-6; // m, of the reader’s zero

const say = teller(whereIsZero);

const size = (value: number, kind: 'stretch' | 'stress', { system }: State) =>
  formatQuantity(Math.abs(value), kind, system);

function finding(state: State): string {
  const { values, system } = state;
  const { way, series, eyeZero, classroomZero, classroomReach, eyeOff, eyeError } = values;
  const number = `Series ${formatQuantity(series, 'count', system)}`;
  if (way === 'eye')
    return `${number}: from your zero the last reading is ${say(state, 'eyeStretch')} of stretch, or ${say(state, 'eyeStress')}.`;
  if (way === 'classroom') {
    const zero = formatQuantity(classroomZero, 'stretch', system, { uncertainty: classroomReach });
    const above = eyeZero >= classroomZero ? 'above' : 'below';
    return `${number}: the classroom rule puts zero at ${zero}. Yours is ${size(eyeZero - classroomZero, 'stretch', state)} ${above} it.`;
  }
  if (Math.abs(eyeOff) < HALF_A_STEP)
    return `${number}: your zero, ${say(state, 'eyeZero')}, is the true one.`;
  const side = eyeOff >= 0 ? ['above', 'low'] : ['below', 'high'];
  return `${number}: your zero is ${size(eyeOff, 'stretch', state)} ${side[0]} the truth, so your stress is ${size(eyeError, 'stress', state)} too ${side[1]}.`;
}

function description(state: State): string {
  const list = readingsOf(state).map(({ reading }) =>
    formatQuantity(reading, 'stretch', state.system),
  );
  return `Ten readings of the dial at rising torque: ${list.join(', ')}. A ruler runs from your zero, ${say(state, 'eyeZero')}, through the middle of the upper ones.`;
}

/** Which readings the line leaves out, and why. */
function leftOut(state: State): string {
  const { way } = state.values;
  if (way === 'eye') return 'the ruler turns about the middle of the upper half';
  if (way === 'classroom') return 'filled: the upper half, chosen beforehand';
  const toes = readingsOf(state).filter(({ isUsed }) => !isUsed);
  const amounts = toes.map(({ toe }) => size(toe, 'stretch', state)).join(', ');
  const repeats = formatQuantity(dialRepeatability, 'stretch', state.system);
  return toes.length === 0
    ? `no reading still straightens by more than the dial repeats to, ${repeats}`
    : `hollow: still straightening, by ${amounts}; the dial repeats to ${repeats}`;
}

function notes(state: State): readonly string[] {
  const reach = state.values.way === 'eye' ? [] : ['after ±: 95 %'];
  return [leftOut(state), 'simulated, for the mill at Ottersleigh', ...reach];
}

function Drawing(state: State) {
  return (
    <Sheet idPrefix={state.idPrefix} size={seriesLayout(state.narrow)}>
      <ReadingsPlot state={state} />
      <Zeros state={state} />
    </Sheet>
  );
}

/** The figure of the series. */
export const figure: Figure = { finding, description, notes, Drawing };
