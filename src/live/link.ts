/**
 * The link is the state: `#v=1&stretch=0.00018&released=letGo`, version first, then only the inputs that differ from
 * their defaults, quantities in SI, choices by name. The first links counted the options of a choice from 0; such a
 * number still opens, by the order in which they stood then. A link from outside is hostile: every key and range is checked, nothing throws, and what could
 * not be used is reported. A fragment without `v` is an ordinary anchor.
 * Units: SI.
 */
import {
  type InputSpec,
  isChoice,
  type Model,
  type Value,
  type Values,
} from '../models/define-model.ts';

/** What a link gave: the inputs that could be used, and the parts that could not, as they stood. */
export interface LinkContent {
  readonly inputs: Values;
  readonly refused: readonly string[];
}

const NOTHING: LinkContent = { inputs: {}, refused: [] };

const significant = (value: Value) =>
  typeof value === 'number' ? String(Number(value.toPrecision(9))) : value;

/**
 * The fragment for these inputs, without `#`: those that differ from their defaults, and those that the page itself sets
 * (`own`). Empty where all stand as the page starts.
 */
export function linkFragment(model: Model, inputs: Values, own: Values = {}): string {
  const all = Object.entries(model.inputs).map(([name, spec]) => {
    const value = significant(inputs[name] ?? spec.default);
    const isAtStart = value === significant(own[name] ?? spec.default);
    return { name, value, isAtStart, isNamed: name in own || !isAtStart };
  });
  if (all.every(({ isAtStart }) => isAtStart)) return '';
  const named = all.filter(({ isNamed }) => isNamed);
  return ['v=1', ...named.map(({ name, value }) => `${name}=${value}`)].join('&');
}

/** What a text says of an input; undefined where it says nothing that the input can hold. */
function read(spec: InputSpec, text: string): Value | undefined {
  const number = text.trim() === '' ? Number.NaN : Number(text);
  if (!isChoice(spec)) return number >= spec.min && number <= spec.max ? number : undefined;
  const named = spec.options.find((option) => option === text);
  return named ?? spec.counted?.[number];
}

function readVersion1(model: Model, pairs: readonly (readonly [string, string])[]): LinkContent {
  const inputs: Record<string, Value> = {};
  const refused: string[] = [];
  for (const [name, text] of pairs) {
    const spec = Object.hasOwn(model.inputs, name) ? model.inputs[name] : undefined;
    const value = spec && read(spec, text);
    if (value === undefined) refused.push(`${name}=${text}`);
    else inputs[name] = value;
  }
  return { inputs, refused };
}

/** Reads a fragment (with or without `#`) for a model. Never throws. */
export function readLink(model: Model, fragment: string): LinkContent {
  const pairs = [...new URLSearchParams(fragment.replace(/^#/, ''))];
  const [first, ...rest] = pairs;
  if (first?.[0] !== 'v') return NOTHING;
  if (first[1] === '1') return readVersion1(model, rest);
  return { inputs: {}, refused: [`v=${first[1]}`] };
}
