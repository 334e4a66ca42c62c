/** Printed sizes of threads. */
import { acmePitchDiameter2G } from '../../../src/core/threads/form.ts';
import { threadProfile } from '../../../src/core/threads/profile.ts';
import { thread } from '../../../src/core/threads.ts';
import { siValue } from '../../../src/units/conversions.ts';
import { UNITS } from '../../../src/units/reading/table.ts';
import { type Answer, type Answers, printed, recomputed, type Within } from '../answer.ts';
import { numberAt, type PublishedCase, valueAt } from '../cases.ts';

const mm = 1e-3;
const inch = siValue(1, UNITS.in.factor);
const threeDecimals: Within = { decimals: 3 };
const fourDecimals: Within = { decimals: 4 };

/** A metric thread; its nut's basic minor diameter follows the profile that Unified threads share. */
function metricSizes(designation: string) {
  const { pitchDiameter, minorDiameter, stressArea = Number.NaN, ...size } = thread(designation);
  const nut = threadProfile('unified', size).minorDiameter;
  return {
    pitch: pitchDiameter / mm,
    root: minorDiameter / mm,
    nut: nut / mm,
    area: stressArea / mm ** 2,
  };
}

/** Three significant digits: 84.3 and 157. */
const stressAreaWithin = (area: number): Within => ({ decimals: area < 100 ? 1 : 0 });

function coarseMetric({ expected }: PublishedCase): readonly Answer[] {
  return Object.keys(valueAt(expected, 'published') as object).flatMap((name) => {
    const size = metricSizes(name);
    return [
      printed(`${name} > d2_mm`, `${name}, pitch diameter`, 'mm', size.pitch, threeDecimals),
      printed(`${name} > d1_mm`, `${name}, basic minor diameter`, 'mm', size.nut, threeDecimals),
      printed(
        `${name} > As_mm2`,
        `${name}, stress area`,
        'mm²',
        size.area,
        stressAreaWithin(size.area),
      ),
      ...metricRecomputed(name, 'd1_mm'),
    ];
  });
}

function metricRecomputed(name: string, nutKey: string): readonly Answer[] {
  const size = metricSizes(name);
  return [
    recomputed(`${name} > d2_mm`, `${name}, pitch diameter`, 'mm', size.pitch, 1e-12),
    recomputed(`${name} > ${nutKey}`, `${name}, basic minor diameter`, 'mm', size.nut, 1e-12),
    recomputed(`${name} > d3_mm`, `${name}, root`, 'mm', size.root, 1e-12),
    recomputed(`${name} > As_mm2`, `${name}, stress area`, 'mm²', size.area, 1e-12),
  ];
}

function fineMetric({ expected }: PublishedCase): readonly Answer[] {
  const within: Within = { absolute: 0.0006 };
  return Object.keys(valueAt(expected, 'published') as object).flatMap((name) => {
    const size = metricSizes(name);
    return [
      printed(`${name} > d2_mm`, `${name}, pitch diameter`, 'mm', size.pitch, within),
      printed(`${name} > d3_mm`, `${name}, root`, 'mm', size.root, within),
      printed(`${name} > D1_mm`, `${name}, basic minor diameter`, 'mm', size.nut, within),
      ...metricRecomputed(name, 'D1_mm'),
    ];
  });
}

/** Pitch diameters are printed to four decimals; stress areas to three, the smallest to four. */
function unifiedCoarse({ expected }: PublishedCase): readonly Answer[] {
  return Object.keys(valueAt(expected, 'published') as object).flatMap((name) => {
    const { pitchDiameter, stressArea = Number.NaN } = thread(`${name} UNC`);
    const [pitch, area] = [pitchDiameter / inch, stressArea / inch ** 2];
    const decimals = name === '1/2-13' ? 4 : 3;
    return [
      printed(`${name} > E_in`, `${name} UNC, pitch diameter`, 'in', pitch, fourDecimals),
      printed(`${name} > At_in2`, `${name} UNC, stress area`, 'in²', area, { decimals }),
      recomputed(`${name} > E_in`, `${name} UNC, pitch diameter`, 'in', pitch, 1e-12),
      recomputed(`${name} > At_in2`, `${name} UNC, stress area`, 'in²', area, 1e-12),
    ];
  });
}

function acme({ expected }: PublishedCase): readonly Answer[] {
  return Object.keys(valueAt(expected, 'published') as object).flatMap((name) => {
    const { pitchDiameter, minorDiameter } = thread(`${name} Acme`);
    const minor = minorDiameter / inch;
    return [
      printed(
        `${name} > E_in`,
        `${name} Acme, pitch diameter`,
        'in',
        pitchDiameter / inch,
        fourDecimals,
      ),
      printed(`${name} > K_in`, `${name} Acme, minor diameter`, 'in', minor, fourDecimals),
    ];
  });
}

function acmeClass2G({ inputs }: PublishedCase): readonly Answer[] {
  return (valueAt(inputs, 'threads') as readonly { readonly name: string }[]).map((each) => {
    const size = {
      majorDiameter: numberAt(each, 'D_in') * inch,
      pitch: inch / numberAt(each, 'tpi'),
    };
    const largest = acmePitchDiameter2G(size) / inch;
    const quantity = `${each.name} Acme 2G, largest pitch diameter`;
    return printed(`${each.name} > pitchMax_in`, quantity, 'in', largest, { absolute: 0.0001 });
  });
}

function trapezoidal({ expected }: PublishedCase): readonly Answer[] {
  const within: Within = { absolute: 1e-9 };
  return Object.keys(valueAt(expected, 'published') as object).flatMap((name) => {
    const { pitchDiameter, minorDiameter } = thread(name);
    return [
      printed(`${name} > d2_mm`, `${name}, pitch diameter`, 'mm', pitchDiameter / mm, within),
      printed(`${name} > d3_mm`, `${name}, root`, 'mm', minorDiameter / mm, within),
    ];
  });
}

export const threadAnswers: Answers = {
  'iso724-iso898-coarse-a': coarseMetric,
  'iso724-fine': fineMetric,
  'asme-b1-1-unc': unifiedCoarse,
  'asme-b1-5-acme': acme,
  'asme-b1-5-acme-2g-max': acmeClass2G,
  'iso2904-trapezoidal-a': trapezoidal,
};
