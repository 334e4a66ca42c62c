/** The bench's link, there and back; a hostile one is told and never throws. */
import { describe, expect, it } from 'vitest';
import { benchLevels } from '../../src/core/bench.ts';
import { FIRST_PLACE, fragmentOf, readAddress, seedOf } from '../../src/practice/state/address.ts';

describe('a link', () => {
  it('gives back its mill, at every level', () => {
    for (const level of benchLevels)
      for (const seed of [0, 1, 1234, 2 ** 32 - 1]) {
        const place = { seed, level };
        expect(readAddress(`#${fragmentOf(place)}`)).toEqual({
          place,
          isTeachers: false,
          refused: [],
        });
      }
  });
  it('is as it is told to a class', () => {
    expect(fragmentOf({ seed: 1234, level: 'slipping' })).toBe('v=1&seed=1234&level=slipping');
    expect(readAddress('#v=1&seed=1234&level=slipping&lid=open')).toEqual({
      place: { seed: 1234, level: 'slipping' },
      isTeachers: true,
      refused: [],
    });
  });
  it('names no mill where it is none, or an anchor', () => {
    for (const none of ['', '#', '#content'])
      expect(readAddress(none)).toEqual({ place: undefined, isTeachers: false, refused: [] });
  });
  it.each([
    ['#v=1&seed=-5&level=clean', ['seed=-5']],
    ['#v=1&seed=4294967296&level=clean', ['seed=4294967296']],
    ['#v=1&seed=1e3&level=clean', ['seed=1e3']],
    ['#v=1&seed=007&level=clean', ['seed=007']],
    ['#v=1&seed=&level=clean', ['seed=']],
    ['#v=1&seed=1&level=__proto__', ['level=__proto__']],
    ['#v=1&seed=1&level=clean&lid=ajar', ['lid=ajar']],
    ['#v=1&seed=1&level=clean&x=%3Cscript%3E', ['x=<script>']],
    ['#v=9&seed=12&level=toe', ['v=9']],
  ])('that is broken, %s, is told and gives the first mill', (fragment, refused) =>
    expect(readAddress(fragment)).toEqual({ place: FIRST_PLACE, isTeachers: false, refused }),
  );
  it('keeps the part that can be used', () =>
    expect(readAddress('#v=1&seed=77&level=broken').place).toEqual({ seed: 77, level: 'clean' }));
  it('shows of what is long only the beginning', () => {
    const [shown] = readAddress(`#v=1&seed=${'9'.repeat(500)}&level=clean`).refused;
    expect(shown).toHaveLength(60);
  });
  it('is not fooled by a broken escape', () =>
    expect(readAddress('#v=1&seed=%E0%A4%A&level=clean').place).toEqual(FIRST_PLACE));
});

describe('seedOf', () => {
  it('reads whole numbers as we write them', () => {
    expect(seedOf('0')).toBe(0);
    expect(seedOf('4294967295')).toBe(2 ** 32 - 1);
    for (const text of [null, '', ' 1', '1.5', '+1', '01', '99999999999'])
      expect(seedOf(text)).toBeUndefined();
  });
});
