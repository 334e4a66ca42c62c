import { describe, expect, it } from 'vitest';
import { sizeAsWritten, withoutRemark } from '../../../src/core/threads/as-written.ts';

describe('sizeAsWritten', () => {
  it('reads millimeters, and inches with threads to the inch', () => {
    expect(sizeAsWritten('m24x4')).toEqual({
      family: 'metric',
      majorDiameter: 0.024,
      pitch: 0.004,
    });
    expect(sizeAsWritten('tr24x4.5')).toMatchObject({ family: 'trapezoidal', pitch: 0.0045 });
    expect(sizeAsWritten('1 1/8-4 acme')).toEqual({
      family: 'acme',
      majorDiameter: expect.closeTo(1.125 * 0.0254, 12),
      pitch: expect.closeTo(0.0254 / 4, 12),
    });
    expect(sizeAsWritten('1 3/4-12 un')?.family).toBe('unified');
  });

  it('takes diameters from 4 to 100 mm and no other', () => {
    expect(sizeAsWritten('m4x0.7')).toBeDefined();
    expect(sizeAsWritten('m3.9x0.7')).toBeUndefined();
    expect(sizeAsWritten('tr100x12')).toBeDefined();
    expect(sizeAsWritten('tr101x12')).toBeUndefined();
    expect(sizeAsWritten('4-4 acme')).toBeUndefined();
  });
});

describe('withoutRemark', () => {
  it.each([
    ['tr 24x4, greased', 'tr 24x4'],
    ['3/4-6 acme single start', '3/4-6 acme'],
    ['m20x2.5-6g; dry', 'm20x2.5-6g'],
    ['tr24x4 (1 start)', 'tr24x4'],
    ['3/4-6 acme', '3/4-6 acme'],
    ['acme 1-5', 'acme 1-5'],
  ])('leaves of “%s” the size', (name, size) => expect(withoutRemark(name)).toBe(size));

  it.each(['tr24x4 two starts', '3/4-6 stub acme', '3/4-6 acme, double', 'm20, fine'])(
    'leaves “%s” as it is, for it is another thread',
    (name) => expect(withoutRemark(name)).toBe(name),
  );
});
