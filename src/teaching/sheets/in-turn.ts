/**
 * The share of a question's numbers that a sheet draws from: sheets behind each other have shares that have nothing in
 * common, so that no neighbor has the same question. The number of a sheet alone says which share it has.
 * Units: SI in the values.
 * Source: definition.
 */
import { evaluated, inputsAt, type Model } from '../../models/define-model.ts';
import { type DrawRange, type ProblemTemplate, pieces } from '../../models/problem.ts';
import { inWords } from '../../models/problem-words.ts';
import type { UnitSystem } from '../../units/kinds.ts';

const SHARES = 4; // sheets behind each other that differ, where the numbers suffice

/** An input with those of its numbers that make the question read differently, and how many they are. */
interface Apart {
  readonly name: string;
  readonly range: DrawRange;
  readonly count: number;
  readonly isNamed: boolean;
}

/** What the question says for each number of an input, the other inputs at the beginnings of theirs. */
function readings(
  { ask, draw, fixed }: ProblemTemplate,
  name: string,
  model: Model,
  system: UnitSystem,
): readonly string[] {
  const { from, to, step } = draw[name] as DrawRange;
  const others = Object.fromEntries(
    Object.entries(draw).map(([each, range]) => [each, range.from]),
  );
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, place) => {
    const inputs = { ...fixed, ...others, [name]: from + place * step };
    return inWords(ask, model, evaluated(model, inputsAt(model, inputs, system)), system);
  });
}

/** An input with its steps widened until no two of its numbers read the same. */
function apart(template: ProblemTemplate, name: string, model: Model, system: UnitSystem): Apart {
  const { from, step } = template.draw[name] as DrawRange;
  const said = readings(template, name, model, system);
  const isNamed = pieces(template.ask).some((piece) => 'name' in piece && piece.name === name);
  for (let stride = 1; stride < said.length; stride += 1) {
    const kept = said.filter((_, place) => place % stride === 0);
    const wider = stride * step;
    if (new Set(kept).size === kept.length)
      return {
        name,
        range: { from, to: from + (kept.length - 1) * wider, step: wider },
        count: kept.length,
        isNamed,
      };
  }
  return { name, range: { from, to: from, step }, count: 1, isNamed };
}

const rank = ({ count, isNamed }: Apart): number => (isNamed && count > 1 ? count + 1e6 : count);

const found = new WeakMap<ProblemTemplate, Map<UnitSystem, Apart | undefined>>();

/** The input that tells two sheets apart: one that the question names, or else one that changes what it says; found once. */
function telling(template: ProblemTemplate, model: Model, system: UnitSystem): Apart | undefined {
  const known = found.get(template) ?? new Map<UnitSystem, Apart | undefined>();
  found.set(template, known);
  if (!known.has(system)) {
    const all = Object.keys(template.draw).map((name) => apart(template, name, model, system));
    known.set(system, all.toSorted((one, other) => rank(other) - rank(one))[0]);
  }
  return known.get(system);
}

/** The template as the sheet of that number draws it; as it is where it has no number that could differ. */
export function inTurn(
  template: ProblemTemplate,
  model: Model,
  sheet: number,
  system: UnitSystem,
): ProblemTemplate {
  const most = telling(template, model, system);
  if (!most || most.count < 2) return template;
  const { name, range, count } = most;
  const shares = Math.min(SHARES, count);
  const own = sheet % shares;
  const last = own + Math.floor((count - 1 - own) / shares) * shares;
  const share = {
    from: range.from + own * range.step,
    to: range.from + last * range.step,
    step: shares * range.step,
  };
  return { ...template, draw: { ...template.draw, [name]: share } };
}
