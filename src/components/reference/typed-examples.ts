/** What people type into boxes and what the boxes make of it, read by the same code that reads them on the pages. */
import { formatQuantity } from '../../units/format-quantity.ts';
import type { QuantityKind, UnitSystem } from '../../units/kinds.ts';
import { ASKED } from '../../units/reading/asked.ts';
import { parseQuantity } from '../../units/reading/parse-quantity.ts';

/** What the switch has to stand at for the answer: one system, or any where it makes no difference. */
export type SwitchAt = UnitSystem | 'any';

/** One typed text and the answer to it. */
export interface TypedExample {
  readonly text: string;
  readonly noun: string;
  readonly switchAt: SwitchAt;
  /** Shown in both systems, or why it is refused. */
  readonly answer: { readonly metric: string; readonly us: string } | { readonly refused: string };
}

const TYPED: readonly (readonly [text: string, kind: QuantityKind, system: UnitSystem])[] = [
  ['27.1', 'torque', 'metric'],
  ['20 ft·lbs', 'torque', 'metric'],
  ['20 3/4', 'longLength', 'us'],
  ['1-3/8"', 'length', 'us'],
  ["12' 6", 'longLength', 'us'],
  ['.042', 'thickness', 'us'],
  ['1,1 mm', 'thickness', 'us'],
  ['12 thou', 'stretch', 'metric'],
  ['1 1/4', 'turns', 'metric'],
  ['90 deg', 'turns', 'metric'],
  ['17 ksi', 'stress', 'metric'],
  ['1,200', 'force', 'metric'],
  ['20 lb', 'torque', 'us'],
  ['0.5', 'count', 'metric'],
];

function answered(text: string, kind: QuantityKind, system: UnitSystem): TypedExample['answer'] {
  const found = parseQuantity(text, kind, system);
  if (!found.ok) return { refused: found.reason };
  const say = (shown: UnitSystem) => formatQuantity(found.value, kind, shown);
  return { metric: say('metric'), us: say('us') };
}

/** Whether a text means the same, or is refused alike, wherever the switch stands. */
function switchFor(text: string, kind: QuantityKind, system: UnitSystem): SwitchAt {
  const [metric, us] = [parseQuantity(text, kind, 'metric'), parseQuantity(text, kind, 'us')];
  const isSame = metric.ok && us.ok ? metric.value === us.value : metric.ok === us.ok;
  return isSame ? 'any' : system;
}

/** All examples, answered. */
export const typedExamples = (): readonly TypedExample[] =>
  TYPED.map(([text, kind, system]) => ({
    text,
    noun: ASKED[kind].noun,
    switchAt: switchFor(text, kind, system),
    answer: answered(text, kind, system),
  }));
