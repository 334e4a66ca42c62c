import { describe, expect, it } from 'vitest';
import { thread, threadByName, washerOfThread } from '../../src/core/threads.ts';

describe('threadByName', () => {
  it('is what thread gives of a listed name, and nothing of none', () => {
    expect(threadByName('tr 20 x 4')).toEqual({
      ...thread('Tr20x4'),
      isListed: true,
      isInch: false,
    });
    expect(threadByName('')).toBeUndefined();
  });

  it.each([
    ['Tr 24x4', 24, 4, 22],
    ['Tr24x4, greased', 24, 4, 22],
    ['Tr20 × 4,5 single start', 20, 4.5, 17.75],
    ['M24x4', 24, 4, 24 - 4 * 0.649519],
  ])('works out %s from diameter and pitch (ISO 2904, ISO 724)', (name, diameter, pitch, d2) => {
    const read = threadByName(name);
    expect(read?.isListed).toBe(false);
    expect(read?.majorDiameter).toBeCloseTo(diameter / 1000, 12);
    expect(read?.pitch).toBeCloseTo(pitch / 1000, 12);
    expect(read?.pitchDiameter).toBeCloseTo(d2 / 1000, 8);
  });

  it.each([
    ['3/4-5 acme', 0.75, 5],
    ['1 1/8 - 4 Acme, dry', 1.125, 4],
    ['Acme .875-5', 0.875, 5],
  ])('works out %s as d − P/2 with all in inches (ASME B1.5)', (name, diameter, perInch) => {
    const { isListed, isInch, pitchDiameter } = threadByName(name) ?? {};
    expect([isListed, isInch]).toEqual([false, true]);
    expect(pitchDiameter).toBeCloseTo((diameter - 0.5 / perInch) * 0.0254, 8);
  });

  it.each([
    ['0.75-6 acme', '3/4-6 Acme'],
    ['3/4-6 acme, single', '3/4-6 Acme'],
    ['acme 1-5, greased', '1-5 Acme'],
    ['M20 (rolled)', 'M20'],
    ['Tr20x4 1 start', 'Tr20x4'],
    ['5/8-11 UNC-2A oiled', '5/8-11 UNC'],
  ])('knows that %s is %s', (typed, meant) =>
    expect(threadByName(typed)).toMatchObject({ ...thread(meant), isListed: true }),
  );

  it.each([
    '3/4-6 Acme stub',
    'Tr20x8 P4',
    'Tr20x4, two starts',
    'M20 fine',
    '5/8-11 BSW',
    'Tr20x10',
    'Tr240x4',
    'M20x0',
    '3/0-6 acme',
    '3/4-11',
    '24x4',
  ])('takes no size from %s, which is another thread or none', (name) =>
    expect(threadByName(name)).toBeUndefined(),
  );
});

describe('washerOfThread', () => {
  it('of a pitch that no list has is that of the diameter', () => {
    expect(washerOfThread('Tr24x4')).toEqual(washerOfThread('M24'));
    expect(washerOfThread('3/4-5 Acme')).toEqual(washerOfThread('3/4-10 UNC'));
    expect(washerOfThread('handle')).toBeUndefined();
  });
});
