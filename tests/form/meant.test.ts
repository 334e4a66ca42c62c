import { describe, expect, it } from 'vitest';
import { readBox } from '../../src/form/box.ts';
import { FIELDS } from '../../src/form/fields.ts';
import { meantInstead } from '../../src/form/meant.ts';
import { type FieldPath, findField } from '../../src/form/paths.ts';
import type { UnitSystem } from '../../src/units/kinds.ts';

const says = (path: FieldPath, typed: string) => meantInstead(path, typed, 'metric')?.says;

describe('what to type instead', () => {
  it.each(['about 400', '~400', '400ish', 'ca. 400', '400?', '±400', 'Approx. 400'])(
    'offers 400 for “%s”',
    (typed) => expect(says('mill.wheelDiameter1', typed)).toBe('Type just 400.'),
  );

  it('keeps a unit that the box takes', () =>
    expect(says('rig.gaugeLength', 'about 60 cm')).toBe('Type just 60 cm.'));

  it('takes a range from nothing for its upper end', () =>
    expect(says('tensioner.cylinder.gaugeTop', '0-250')).toBe(
      'Type one number. Did you mean 250?',
    ));

  it('offers what is halfway between two numbers', () =>
    expect(says('mill.wheelDiameter1', '510 or 520')).toBe(
      'Type one number, such as 515, halfway between.',
    ));

  it('offers one of the two where what is halfway cannot be', () =>
    expect(says('plan.steps', '9 or 10')).toBe('Type one number: 9 or 10.'));

  it('offers the one reading of a mark among figures that its box takes without a word', () => {
    const offered = (path: FieldPath, typed: string) =>
      Object.values(meantInstead(path, typed, 'us')?.offers ?? {});
    expect(offered('target.stress', '14,000')).toEqual(['14000']);
    expect(offered('target.stress', '14,000 psi')).toEqual(['14000 psi']);
    expect(offered('band.thickness', '1,050 mm')).toEqual(['1.050 mm']);
    expect(offered('target.stress', '1,400,000')).toEqual([]);
  });

  it('puts the ends of a range into its two boxes, from either', () => {
    const meant = meantInstead('tensioner.cylinder.sealHigh', '4–6 %', 'metric');
    expect(meant?.says).toBe('Type 4 % in the first box and 6 % in the second.');
    expect(meant?.offers).toEqual({
      'tensioner.cylinder.sealLow': '4 %',
      'tensioner.cylinder.sealHigh': '6 %',
    });
  });

  it('shows the box for how far off a number may be', () => {
    expect(says('tensioner.dragTorque', '4 ± 1')).toBe('Type 4 here and 1 under “give or take”.');
    expect(says('tensioner.dragTorque', '2 to 3 N·m')).toBe(
      'Type 2.5 N·m here and 0.5 N·m under “give or take”.',
    );
  });

  it.each(['12-14', '14 to 12', 'between 12 and 14'])(
    'asks about inch-pounds where “%s” is too much in the box’s own unit',
    (typed) => {
      const meant = meantInstead('tensioner.dragTorque', typed, 'us');
      expect(meant?.says).toBe(
        'Does your wrench have inch-pounds? Type 13 in-lb here and 1 in-lb under “give or take”.',
      );
      expect(Object.values(meant?.offers ?? {})).toEqual(['13 in-lb', '1 in-lb']);
    },
  );

  it.each(['12-14', '14 to 12', 'between 12 and 14'])(
    'offers what the box doubts where “%s” can mean nothing else',
    (typed) => {
      const meant = meantInstead('tensioner.dragTorque', typed, 'metric');
      expect(meant?.says).toBe('Type 13 here and 1 under “give or take”.');
      expect(readBox('13', FIELDS['tensioner.dragTorque'], 'metric').doubt).toContain('Usual here');
    },
  );

  it('takes a range from nothing as one, where there is a box for how far off', () =>
    expect(says('tensioner.dragTorque', '0-4')).toBe('Type 2 here and 2 under “give or take”.'));

  it('offers several readings where the box takes them', () =>
    expect(says('band.thickness', '1.0 or 1.1')).toBe(
      'Type one number, or your readings with a space between: 1.0 1.1.',
    ));

  it.each(['15 N', 'about 15 N', '15 furlongs', '2 x 4', '4/5/6', 'lunch', '-5ish', '9 to 5', ''])(
    'offers nothing for “%s”, whose number is not the length',
    (typed) => expect(meantInstead('mill.wheelDiameter1', typed, 'metric')).toBeUndefined(),
  );

  it('says nothing to a number that a box can read, whatever else is wrong with it', () =>
    expect(says('tensioner.cylinder.pistonDiameter', '40 mm')).toBeUndefined());

  it('never offers, in any box, what a box refuses', () => {
    const numbers = ['0', '0,5', '4', '12', '250', '1 1/4'];
    const texts = numbers.flatMap((a) => [
      `about ${a}`,
      `${a}ish mm`,
      ...numbers.flatMap((b) => [`${a}-${b}`, `${a} or ${b}`, `${a} ± ${b} %`]),
    ]);
    let offered = 0;
    for (const pattern of Object.keys(FIELDS))
      for (const system of ['metric', 'us'] as const)
        for (const typed of texts) {
          const path = pattern.replaceAll('*', '0') as FieldPath;
          const offers = meantInstead(path, typed, system)?.offers ?? {};
          for (const [at, text] of Object.entries(offers)) {
            const field = findField(at);
            if (!field || !('kind' in field)) throw new Error(`${at} is no box for a number`);
            const { value, refusal } = readBox(text, field, system);
            expect([at, typed, value, refusal]).toEqual([at, typed, expect.any(Number), undefined]);
            offered += 1;
          }
        }
    expect(offered).toBeGreaterThan(500);
  });
});

describe('of a dial that is read to a share of its graduation', () => {
  const shared = (typed: string, graduation: string, system: UnitSystem = 'metric') =>
    meantInstead('rig.readTo', typed, system, graduation);

  it.each(['half', 'Half a mark', 'a half', '1/2', '½', '½ mark', 'half of the graduation'])(
    'offers half of it for “%s”',
    (typed) =>
      expect(shared(typed, '0.01')).toEqual({
        says: 'Type 0.005: half of your graduation, 0.01.',
        offers: { 'rig.readTo': '0.005' },
      }),
  );

  it('offers other shares, in the unit that the graduation is typed in', () => {
    expect(shared('a quarter', '0.01 mm')?.offers).toEqual({ 'rig.readTo': '0.0025 mm' });
    expect(shared('fifth', '.001', 'us')?.offers).toEqual({ 'rig.readTo': '0.0002' });
    expect(shared('1/8', '10 µm')?.says).toBe('Type 1.25 µm: 1/8 of your graduation, 10 µm.');
  });

  it.each([
    ['half', ''],
    ['half', 'fine'],
    ['1/2 mm', '0.01'],
    ['half', '5'], // of which the share is refused itself
    ['0.005', '0.01'],
  ])('offers nothing for “%s” of “%s”', (typed, graduation) =>
    expect(shared(typed, graduation)).toBeUndefined(),
  );

  it('says nothing of shares in any other box', () =>
    expect(meantInstead('rig.gaugeLength', 'half', 'metric', '0.01')).toBeUndefined());
});
