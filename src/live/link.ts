/**
 * The link is the state: `#v=1&stretch=0.00018`, version first, then only the inputs that differ from their
 * defaults, in SI. A link from outside is hostile: every key and range is checked, nothing throws, and what could
 * not be used is reported. A fragment without `v` is an ordinary anchor.
 * Units: SI.
 */
import type { Model, Values } from '../models/define-model.ts';

/** What a link gave: the inputs that could be used, and the parts that could not, as they stood. */
export interface LinkContent {
  readonly inputs: Values;
  readonly refused: readonly string[];
}

const NOTHING: LinkContent = { inputs: {}, refused: [] };

const significant = (value: number) => String(Number(value.toPrecision(9)));

/** The fragment for these inputs, without `#`; empty when all are at their defaults. */
export function linkFragment(model: Model, inputs: Values): string {
  const changed = Object.entries(model.inputs).flatMap(([name, spec]) => {
    const value = inputs[name] ?? spec.default;
    return significant(value) === significant(spec.default)
      ? []
      : [`${name}=${significant(value)}`];
  });
  return changed.length === 0 ? '' : ['v=1', ...changed].join('&');
}

function readVersion1(model: Model, pairs: readonly (readonly [string, string])[]): LinkContent {
  const inputs: Record<string, number> = {};
  const refused: string[] = [];
  for (const [name, text] of pairs) {
    const spec = Object.hasOwn(model.inputs, name) ? model.inputs[name] : undefined;
    const value = text.trim() === '' ? Number.NaN : Number(text);
    const usable = spec && value >= spec.min && value <= spec.max;
    const whole = !spec?.options || Number.isInteger(value);
    if (usable && whole) inputs[name] = value;
    else refused.push(`${name}=${text}`);
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
