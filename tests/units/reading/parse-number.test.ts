import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leadingNumber, parseNumber } from '../../../src/units/reading/parse-number.ts';

describe('parseNumber', () => {
  it.each([
    ['27', 27],
    ['+27.1', 27.1],
    ['.042', 0.042],
    ['5.', 5],
    ['0,9', 0.9],
    ['12,5', 12.5],
    ['-2,25', -2.25],
    ['−3', -3],
    ['1.2e3', 1200],
    ['1.2E-3', 0.0012],
    ['12e+2', 1200],
    ['1 200', 1200],
    ['15\u202f373', 15373],
    ['1 234 567,5', 1234567.5],
    ['3/8', 0.375],
    ['3 / 8', 0.375],
    ['20 3/4', 20.75],
    ['20-3/4', 20.75],
    ['-1 1/2', -1.5],
    ['½', 0.5],
    ['20½', 20.5],
    ['7/4', 1.75],
    ['1.200', 1.2],
  ])('reads %s as %f', (text, value) => expect(parseNumber(text)).toEqual({ ok: true, value }));

  it.each(['0,900', ',900', '00,125', '-0,900', '1234,567', '12,3456', '1 200,500'])(
    'reads the comma of %s as a decimal comma, since no thousands are written so',
    (text) => {
      const value = Number(text.replaceAll(' ', '').replace(',', '.'));
      expect(parseNumber(text)).toEqual({ ok: true, value });
    },
  );

  it.each([
    ['1,200', '“1,200” can be read in two ways. Write 1.2 or 1200.'],
    ['-20,750', '“-20,750” can be read in two ways. Write -20.75 or -20750.'],
    ['1,200.5', '“1,200.5” has marks between its thousands. Write 1200.5.'],
    ['1,200,000', '“1,200,000” has marks between its thousands. Write 1200000.'],
    ['1.200,5', '“1.200,5” has marks between its thousands. Write 1200.5.'],
    ['1,200.55', '“1,200.55” has marks between its thousands. Write 1200.55.'],
    ['0,900.5', '“0,900.5” has marks between its thousands. Write 900.5.'],
    ['+12.345.678,25 N', '“+12.345.678,25” has marks between its thousands. Write 12345678.25.'],
    ['1.200.300', '“1.200.300” has marks between its thousands. Write 1200300.'],
  ])('refuses %s and says what to write instead', (text, reason) =>
    expect(parseNumber(text)).toEqual({ ok: false, code: 'thousands', reason }),
  );

  it.each([
    ['3/0', '“3/0” divides by zero. A fraction looks like 3/8.'],
    ['20 5/4', '“20 5/4” holds more than one whole. If it is meant, write 21 1/4.'],
    ['-2 4/4 in', '“-2 4/4” holds more than one whole. If it is meant, write -3.'],
  ])('refuses %s and says what a fraction is', (text, reason) =>
    expect(parseNumber(text)).toEqual({ ok: false, code: 'fraction', reason }),
  );

  it.each([
    ['', 'notANumber'],
    ['.', 'notANumber'],
    ['-', 'notANumber'],
    ['abc', 'notANumber'],
    ['x5', 'notANumber'],
    ['about 3/8', 'notANumber'],
    ['a 1.200.300', 'notANumber'],
    ['27 N', 'notANumber'],
    ['12,345,6', 'notANumber'],
    ['1.2.3', 'notANumber'],
    ['1 2000', 'notANumber'],
    ['20 - 3/4', 'notANumber'],
    ['1.5 3/4', 'notANumber'],
    ['1/2/3', 'notANumber'],
    ['20 3/', 'notANumber'],
    ['134 ± 9', 'notANumber'],
    ['--5', 'notANumber'],
  ])('refuses %j as %s', (text, code) =>
    expect(parseNumber(text)).toMatchObject({ ok: false, code }),
  );

  it('reads any finite number as JavaScript writes it', () =>
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(parseNumber(String(value))).toEqual({ ok: true, value: value === 0 ? 0 : value });
      }),
    ));

  it('reads a mixed number as its whole plus its fraction', () =>
    fc.assert(
      fc.property(fc.nat(400), fc.integer({ min: 0, max: 63 }), (whole, top) => {
        expect(parseNumber(`${whole} ${top}/64`)).toEqual({ ok: true, value: whole + top / 64 });
      }),
    ));
});

describe('leadingNumber', () => {
  it('refuses what no computer number holds', () =>
    expect(leadingNumber('1e999 mm')).toEqual({
      ok: false,
      code: 'tooLarge',
      reason: '“1e999” is too large.',
    }));

  it.each([
    ['27 N·m', 27, 'N·m'],
    ['20-3/4"', 20.75, '"'],
    ["5.25'", 5.25, "'"],
    ['20-inch', 20, '-inch'],
    ['14°', 14, '°'],
    ['7%', 7, '%'],
    ['12 #', 12, '#'],
    ['5 ℃', 5, '℃'],
    ['1e3mm', 1000, 'mm'],
  ])('parts %s into number and unit', (text, value, rest) =>
    expect(leadingNumber(text)).toEqual({ ok: true, value, rest }),
  );

  it.each(['134 ± 9 MPa', '20 - 3/4 in', '5 (in)', '20 3 mm', '4 or 5', '4 mm to 5 mm'])(
    'refuses %s, which is not one number and a unit',
    (text) =>
      expect(leadingNumber(text)).toEqual({
        ok: false,
        code: 'notANumber',
        reason: `“${text}” is not one number.`,
      }),
  );

  it('refuses words before a fraction', () =>
    expect(leadingNumber('about 3/8 in')).toMatchObject({ code: 'notANumber' }));

  it('refuses before it looks at the unit', () =>
    expect(leadingNumber('1,200 mm')).toMatchObject({ code: 'thousands' }));
});
