/** A whole worksheet in a link: there and back, and hostile links told apart. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checksum, packed, unpacked } from '../../../src/worksheet/io/packing.ts';

describe('a link', () => {
  it('gives back what was packed, with letters of every kind', async () => {
    const value = { label: 'Mühle ½ · 木', rows: [['1.5', '0.470']] };
    expect(await unpacked(`#${await packed(value)}`)).toEqual({
      kind: 'value',
      value,
      isChecked: true,
    });
  });

  it('needs no escaping', async () =>
    expect(await packed({ text: '?>~ÿ'.repeat(40) })).toMatch(/^v=2&w=[\w-]+$/));

  it('of version 1 opens for ever, as one that nobody can check', async () =>
    expect(await unpacked('#v=1&w=q1bKSUxKzVGyUvLPSVHIzczJUdJRylOyMqwFAA')).toEqual({
      kind: 'value',
      value: { label: 'Old mill', n: 1 },
      isChecked: false,
    }));

  it('of version 2 opens for ever', async () =>
    expect(
      await unpacked('#v=2&w=H4sIAAAAAAAAA6tWyklMSs1RslLyz0lRyM3MyVHSUcpTsjKsBQBJWRL4GgAAAA'),
    ).toEqual({
      kind: 'value',
      value: { label: 'Old mill', n: 1 },
      isChecked: true,
    }));

  it('is refused with any one letter changed', async () => {
    const whole = await packed({ label: 'Mill', 'band.thickness': '1.10' });
    const value = await unpacked(whole);
    for (let place = 0; place < whole.length; place += 1)
      for (const letter of 'A7_') {
        const changed = whole.slice(0, place) + letter + whole.slice(place + 1);
        expect([{ kind: 'damaged' }, { kind: 'newer' }, value]).toContainEqual(
          await unpacked(changed),
        );
      }
  });

  it.each([
    ['', 'damaged'],
    ['#readings', 'damaged'],
    ['#x=2&q=H4sIAAAAAAAAA6tW', 'damaged'],
    ['#v2wH4sIAAAAAAAAA6tW', 'damaged'],
    ['#v=1', 'damaged'],
    ['#w=abc', 'damaged'],
    ['#v=3&w=abc', 'newer'],
    ['#v=2&w=AAAA', 'damaged'],
    ['#v=one&w=abc', 'damaged'],
    ['#v=1&w=%%%', 'damaged'],
    ['#v=1&w=AAAA', 'damaged'],
  ])('%j is %s', async (fragment, kind) => expect((await unpacked(fragment)).kind).toBe(kind));

  it('cut anywhere is damaged, not half a worksheet', async () => {
    const whole = await packed({ label: 'Mill', boxes: { 'band.thickness': '1' } });
    for (let length = whole.indexOf('w=') + 2; length < whole.length - 2; length += 1)
      expect((await unpacked(whole.slice(0, length))).kind).toBe('damaged');
  });

  it('that unpacks into far too much is refused', async () => {
    const bomb = await new Response(
      new Blob(['0'.repeat(30_000_000)]).stream().pipeThrough(new CompressionStream('deflate-raw')),
    ).arrayBuffer();
    const body = Buffer.from(bomb).toString('base64url');
    expect((await unpacked(`v=1&w=${body}`)).kind).toBe('damaged');
  });

  it('never throws', () =>
    fc.assert(
      fc.asyncProperty(fc.string(), async (text) => {
        expect((await unpacked(text)).kind).toMatch(/^(newer|damaged)$/);
        for (const version of [1, 2])
          expect((await unpacked(`v=${version}&w=${text}`)).kind).toBe('damaged');
      }),
    ));
});

it('the checksum is the CRC-32 of the published check value', async () =>
  expect(await checksum('123456789')).toBe('cbf43926')); // R. Williams, “A painless guide to CRC error detection algorithms” (1993), from memory
