/** What a box refuses names the ends of its range: each end, as it is named, can be read back in either unit system. */
import { expect, it } from 'vitest';
import { models } from '../../src/lessons/all.ts';
import { isChoice } from '../../src/models/define-model.ts';
import { formatQuantity } from '../../src/units/format-quantity.ts';
import { parseQuantity } from '../../src/units/reading/parse-quantity.ts';

const bounds = Object.values(models).flatMap((model) =>
  Object.entries(model.inputs).flatMap(([name, spec]) =>
    isChoice(spec)
      ? []
      : [spec.min, spec.max].map((bound) => ({ input: `${model.name} ${name}`, bound, spec })),
  ),
);

it.each(['metric', 'us'] as const)('in %s units', (system) => {
  expect(bounds.length).toBeGreaterThan(100);
  for (const { input, bound, spec } of bounds) {
    const named = formatQuantity(bound, spec.kind, system);
    const read = parseQuantity(named, spec.kind, system);
    expect(read.ok, `${input}: ${named}`).toBe(true);
  }
});
