/**
 * A chain that the trade would accept: dial readings over a gauge length, as stress. Common practice, no source.
 * Units: as the trade writes them, through the project's own reading of boxes.
 */
import { describe, expect, it } from 'vitest';
import { stress } from '../../src/core/elasticity.ts';
import type { QuantityKind } from '../../src/units/kinds.ts';
import { parseQuantity } from '../../src/units/reading/parse-quantity.ts';
import { fromSi } from '../../src/units/si-value.ts';

function typed(text: string, kind: QuantityKind): number {
  const reading = parseQuantity(text, kind, 'us');
  if (!reading.ok) throw new Error(reading.reason);
  return reading.value;
}

const youngsModulus = typed('29 million psi', 'modulus');
const gaugeLength = typed('20 3/4 in', 'length');
const psiFor = (stretch: string) =>
  fromSi(
    stress({ elongation: typed(stretch, 'stretch'), gaugeLength }, youngsModulus),
    'pressure',
    'us',
  );

describe('29 million psi over 20 3/4 in (common practice, no source)', () => {
  it('is 15 373 psi at .011 in', () => expect(Math.round(psiFor('.011'))).toBe(15_373));
  it('is just under 21 000 psi at .015 in', () => {
    expect(psiFor('.015')).toBeLessThan(21_000);
    expect(psiFor('.015')).toBeGreaterThan(20_900);
  });
  it('is just over 22 000 psi at .016 in', () => {
    expect(psiFor('.016')).toBeGreaterThan(22_000);
    expect(psiFor('.016')).toBeLessThan(22_500);
  });
  it('is 26 554 psi at .019 in', () => expect(Math.round(psiFor('.019'))).toBe(26_554));
});
