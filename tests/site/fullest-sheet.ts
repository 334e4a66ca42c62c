/** Sheets with much on them. The fullest one has more on it than a card can hold: every name at its longest, every list full, as many warnings as there are. */
import { readFileSync } from 'node:fs';

const EXAMPLE = new URL('../form/fixtures/version-1/example-a.json', import.meta.url);
const MOST = 12; // ways, and bands
const LONGEST = 200; // letters

const long = (start: string) => `${start} ${'very long name '.repeat(20)}`.slice(0, LONGEST);
const each = <Row>(row: (place: number) => Row) =>
  Array.from({ length: MOST }, (_, place) => row(place));

/** The file of an example with so many readings, the same ones over and over. */
export function longSheet(rows: number): object {
  const file = JSON.parse(readFileSync(EXAMPLE, 'utf8'));
  const of = (row: number) => file.readings[row % file.readings.length];
  return { ...file, readings: Array.from({ length: rows }, (_, row) => of(row)) };
}

/** The file of the fullest sheet. */
export function fullestSheet(): object {
  const {
    boxes,
    readings,
    thread,
    choices,
    label: _,
    ways: __,
    ...file
  } = JSON.parse(readFileSync(EXAMPLE, 'utf8'));
  const [first, second, ...rest] = readings;
  const ways = each((place) => [long(`Way ${place + 1}`), String(9 + place / 2)]);
  const bands = each((place) => [long(`Band ${place + 1}`), String(22 + 2 * place), '1', '108']);
  const limits = {
    'target.makerLimitStress': '112',
    'target.makerLimitWheelForce': '6600',
    'target.yieldStrength': '700',
  };
  const words = { measuredOn: long('28 Nov'), grease: long('Grease'), wrench: long('Wrench') };
  const { collar } = choices;
  return {
    ...file,
    version: 2,
    typed: {
      ...boxes,
      ...limits,
      'target.stress': '80', // below the readings: the large numeral takes the most room
      ...words,
      label: long('Mill'),
      'tensioner.thread.designation': thread,
      'tensioner.collar.kind': collar,
      'tensioner.friction.low': '0.03',
      'tensioner.friction.high': '0.05',
    },
    tables: {
      readings: [
        ['torque', 'dial', 'wholeTurns', 'turns'],
        first,
        second,
        ...rest.slice(0, -1),
        ['13.2', '0.420', '0', '0.44'],
        rest.at(-1),
      ],
      ways: [['name', 'torque'], ...ways],
      bands: [['name', 'bodyWidth', 'thickness', 'targetStress'], ...bands],
    },
  };
}

/** The fullest sheet without what makes it rough or stops a band: every torque is given, the own one in large numerals. */
export function fullestSettledSheet(): object {
  const file = fullestSheet() as Record<'typed' | 'tables', Record<string, unknown>>;
  const { readings } = JSON.parse(readFileSync(EXAMPLE, 'utf8'));
  const doubtful = /makerLimit|yieldStrength|tensioner\.friction/;
  const bands = each((place) => [long(`Band ${place + 1}`), String(22 + 2 * place), '1', '80']);
  return {
    ...file,
    typed: Object.fromEntries(Object.entries(file.typed).filter(([path]) => !doubtful.test(path))),
    tables: {
      ...file.tables,
      readings: [['torque', 'dial', 'wholeTurns', 'turns'], ...readings],
      bands: [['name', 'bodyWidth', 'thickness', 'targetStress'], ...bands],
    },
  };
}

/** The file of an example that has been measured and filled in whole, with so many other bands, each set within the readings. */
export function bandsSheet(others: number): object {
  const file = fullestSettledSheet() as Record<'typed' | 'tables', Record<string, unknown>>;
  const words = { label: 'Yarrock yard mill', measuredOn: '28 Nov 2026', grease: 'Copper paste' };
  const bands = Array.from({ length: others }, (_, place) => [
    `Band ${place + 2}`,
    String(22 + 2 * place),
    '1',
    '80',
  ]);
  return {
    ...file,
    typed: { ...file.typed, ...words, wrench: 'Beam, to 25 N·m' },
    tables: {
      readings: file.tables['readings'],
      ways: [['name', 'torque']],
      bands: [['name', 'bodyWidth', 'thickness', 'targetStress'], ...bands],
    },
  };
}

/** The same with three bands and a maker's limit, where the measured band's target lies beyond the readings. */
export function provisionalSheet(): object {
  const file = bandsSheet(2) as { readonly typed: Record<string, string> };
  const beyond = { 'target.stress': '125', 'target.makerLimitStress': '170' };
  return { ...file, typed: { ...file.typed, ...beyond } };
}

/** The file of a mill with a hydraulic tensioner: twelve readings down a dial that passes its zero, a setting within them, bands and ways with long names. */
export function hydraulicSheet(): object {
  const { format, units } = JSON.parse(readFileSync(EXAMPLE, 'utf8'));
  const dial = [118, 118, 86, 48, 10, 172, 140, 104, 60, 41, 24, 6]; // µm
  const bars = [5, 16, 27, 38, 49, 60, 70, 81, 92, 98, 103, 108];
  const readings = bars.map((bar, row) => [
    `${bar}`,
    `${(dial[row] ?? 0) / 1000}`,
    row < 5 ? '0' : '1',
  ]);
  return {
    format,
    version: 2,
    units: { ...units, pressure: 'bar', percent: '%' },
    typed: {
      label: long('Mill'),
      'tensioner.kind': 'cylinder',
      'tensioner.cylinder.pistonDiameter': '40',
      'tensioner.cylinder.gaugeTop': '160',
      'tensioner.cylinder.gaugeClass': '1.6',
      'tensioner.cylinder.noLoadPressure': '2.8',
      'use.pressure': '90',
      'band.bodyWidth': '42',
      'band.thickness': '1.25',
      'mill.wheelDiameter1': '700',
      'mill.centreDistance': '1900',
      'rig.gaugeLength': '600',
      'rig.graduation': '0.002',
      'rig.travelPerTurn': '0.2',
      'rig.dialRuns': 'backwards',
      'rig.dialWritten': 'handOnly',
      'target.stress': '110',
      'target.makerLimitStress': '140',
      measuredOn: long('28 Nov'),
      gauge: long('Gauge'),
    },
    tables: {
      readings: [['pressure', 'dial', 'wholeTurns'], ...readings],
      ways: [['name', 'pressure'], ...each((place) => [long(`Way ${place + 1}`), `${84 + place}`])],
      bands: [
        ['name', 'bodyWidth', 'thickness', 'targetStress'],
        ...each((place) => [long(`Band ${place + 1}`), `${25 + 2 * place}`, '1.25', '100']),
      ],
    },
  };
}
