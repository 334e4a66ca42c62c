/**
 * The invented mills are written once, in the inputs of the derived cases: what the lessons and the examples of the
 * worksheet say of them, as text or as numbers, is the same.
 */

import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { evaluateWorksheet, type Worksheet } from '../../src/core/worksheet.ts';
import { DOCUMENT_FORMAT, typedOf } from '../../src/form/document.ts';
import { sheetReader } from '../../src/form/reading.ts';
import { readDocument } from '../../src/form/schema.ts';
import { bareUnits } from '../../src/form/units.ts';
import { MILLS } from '../../src/lessons/counting-turns/mills.worked.ts';
import { ACME_SCREW } from '../../src/lessons/screw-takes-its-cut/mill-screws.ts';
import { dunmarrow } from '../../src/lessons/when-it-warms/mill.worked.ts';
import { OTTERSLEIGH } from '../../src/models/mills/ottersleigh.ts';
import { OTTERSLEIGH_SHEET } from '../../src/models/mills/ottersleigh-sheet.ts';
import type { UnitSystem } from '../../src/units/kinds.ts';
import { worksheetMills } from '../core/worksheet/fixtures/mills.ts';
import { numberPaths, numbersAt, valueAt } from '../published/cases.ts';
import { derivedMills } from '../published/derived-cases.ts';
import { mills } from '../published/mills/mill.ts';
import { textOf } from '../structure/project-files.ts';

type Letter = keyof typeof worksheetMills;

const inputsOf = (letter: string) => {
  const inputs = derivedMills[letter]?.inputs;
  return (key: string) => Number(valueAt(inputs, key));
};

/** Numbers that must be near, by name; the readings' turns are written to nine digits where they are worked out. */
function expectNear(actual: object, expected: object, relative = 1e-8): void {
  for (const path of numberPaths(expected)) {
    const [ours, theirs] = [Number(valueAt(actual, path)), Number(valueAt(expected, path))];
    expect(Math.abs(ours - theirs), path).toBeLessThanOrEqual(relative * Math.abs(theirs) + 1e-12);
  }
}

describe('Ottersleigh, mill A', () => {
  it('has the sizes of A', () => {
    const n = inputsOf('A');
    const [low = 0, high = 0] = numbersAt(derivedMills['A']?.inputs, 'muR');
    expectNear(OTTERSLEIGH, {
      wheelDiameter: n('D1'),
      centreDistance: n('C'),
      widthOverTeeth: n('W'),
      bodyWidth: n('body'),
      thickness: n('t'),
      guideSpan: n('guide'),
      threadSize: { majorDiameter: n('d'), pitch: n('P') },
      threadFriction: { low, middle: n('mu'), high },
      collar: { outerDiameter: n('Do'), innerDiameter: n('Di') },
      collarFriction: n('muc'),
      dragTorque: n('Td'),
      frameStiffness: n('kf'),
      gaugeLength: n('L0'),
      graduation: n('grad'),
      targetStress: n('target'),
      speed: n('v'),
    });
  });

  it('fills in the worksheet of A', () => {
    const { thread: _, ...tensioner } = worksheetMills.A.tensioner;
    const { bands: _none, ...sheet } = { ...worksheetMills.A, tensioner };
    expectNear(OTTERSLEIGH_SHEET, sheet);
    expectNear(
      evaluateWorksheet(OTTERSLEIGH_SHEET).screw,
      evaluateWorksheet(worksheetMills.A).screw,
    );
  });
});

describe('the mills that count turns', () => {
  it.each([
    ['Ottersleigh', 'A'],
    ['Hobsend', 'E'],
    ['Yarrock', 'F'],
    ['Dunmarrow', 'D'],
  ])('%s is mill %s', (place, letter) => {
    const ours = Object.values(MILLS).find((mill) => mill.place === place) ?? MILLS.stiffFrame;
    const n = inputsOf(letter);
    const theirs = mills[letter];
    expectNear(ours, {
      wheelDiameter: n('D1'),
      centreDistance: n('C'),
      bodyWidth: n('body'),
      thickness: n('t'),
      frameStiffness: n('kf'),
      setting: n('target'),
      ...(theirs?.screw && { screw: theirs.screw, dragTorque: n('Td') }),
      ...(theirs?.stack && { spring: { stack: theirs.stack } }),
      ...(n('ks') > 0 && { spring: { stiffness: n('ks') } }),
      ...(n('Dp') > 0 && { cylinder: { bore: n('Dp'), sealFriction: n('Fs') } }),
    });
  });
});

describe('the mill whose oil warms', () => {
  it('is mill D', () => {
    const n = inputsOf('D');
    expectNear(dunmarrow, {
      frameStiffness: n('kf'),
      wheelDiameter: n('D1'),
      centreDistance: n('C'),
      bodyWidth: n('body'),
      thickness: n('t'),
      bore: n('Dp'),
    });
  });
});

describe('the screw that takes its cut', () => {
  it('is that of mill B', () => {
    const { threadFriction, collarFriction, collarDiameter, meanDiameter, lead } = ACME_SCREW;
    const ours = { threadFriction, collarFriction, collarDiameter, meanDiameter, lead };
    const { halfAngle: _, ...theirs } = mills['B']?.screw ?? { halfAngle: 0 };
    expectNear(ours, theirs);
    expectNear(ACME_SCREW, { area: mills['B']?.area ?? 0 });
  });
});

/** A mill of content/mills as its form reads it. */
function typedMill(name: string): Worksheet {
  const {
    about: _,
    system,
    ...sheet
  } = parse(textOf(`content/mills/${name}.yaml`)) as {
    readonly about: string;
    readonly system: UnitSystem;
  };
  const units = bareUnits(system);
  const read = readDocument({ format: DOCUMENT_FORMAT, version: 1, units, ...sheet });
  if (typeof read === 'string') throw new Error(`${name} is ${read}`);
  expect(read.setAside).toEqual([]);
  return sheetReader()(typedOf(read.document, units), system).worksheet;
}

describe('the examples of the worksheet', () => {
  it.each([
    ['a', 'A'],
    ['b', 'B'],
  ] as const)('%s.yaml is mill %s', (name, letter: Letter) => {
    const typed = typedMill(name);
    const { readings, ...sheet } = worksheetMills[letter];
    expectNear(typed, sheet);
    const withoutTurns = readings.map(({ turns: _, ...row }) => row);
    expectNear(typed.readings, withoutTurns);
    const turns = readings.map((row) => expect.closeTo(row.turns ?? 0, 3)); // as they are typed
    expect(typed.readings.map((row) => row.turns)).toEqual(turns);
    const { screw, measured } = evaluateWorksheet(typed);
    expectNear(
      { screw, measured },
      {
        screw: evaluateWorksheet(worksheetMills[letter]).screw,
        measured: evaluateWorksheet(worksheetMills[letter]).measured,
      },
      1e-7,
    );
  });
});
