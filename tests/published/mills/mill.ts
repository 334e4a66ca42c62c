/** One of the six invented mills, read from its inputs, with what every later figure needs. */
import { bandStiffness } from '../../../src/core/loop/band-stiffness.ts';
import { type DiscStack, stackStiffness } from '../../../src/core/loop/disc-stack.ts';
import { loopLength, strandHalfAngle } from '../../../src/core/loop/geometry.ts';
import { wornCollarDiameter } from '../../../src/core/screw/collar.ts';
import { screwOnThread } from '../../../src/core/screw/on-thread.ts';
import type { Screw } from '../../../src/core/screw/torque.ts';
import { sectionArea, strandForce, wheelForce } from '../../../src/core/section.ts';
import { pitchDiameter, type ThreadForm, threadHalfAngle } from '../../../src/core/threads/form.ts';
import { seriesStiffness } from '../../../src/core/turns.ts';
import { numberAt, valueAt } from '../cases.ts';
import { derivedMills, type Reader, readerOf } from '../derived-cases.ts';

/** The steel of all six. */
export const steel = {
  youngsModulus: 205e9, // Pa
  poissonsRatio: 0.3,
  shearModulus: 79e9, // Pa
  density: 7850, // kg/m³
  expansion: 11.5e-6, // 1/K
} as const;

/** Disc springs are of a steel of their own. */
const discSteel = { youngsModulus: 206e9, poissonsRatio: 0.3 } as const;

export interface Mill {
  readonly n: Reader;
  readonly inputs: unknown;
  readonly wheels: Parameters<typeof strandHalfAngle>[0];
  readonly halfAngle: number; // of the strands, rad
  readonly loop: number; // m
  readonly area: number; // m²
  readonly tension: number; // N, of one strand at the target
  readonly wheelForce: number; // N
  readonly thrust: number; // N, of screw or piston
  readonly bandStiffness: number; // N/m
  readonly supportStiffness: number; // N/m, frame and springs
  readonly stack: DiscStack | undefined;
  readonly screw: Screw | undefined;
}

function stackOf(inputs: unknown): DiscStack | undefined {
  if (valueAt(inputs, 'disc') === undefined) return undefined;
  const of = (key: string) => numberAt(inputs, `disc > ${key}`);
  const size = { outerDiameter: of('De'), innerDiameter: of('Di'), thickness: of('t') };
  return { disc: { ...discSteel, ...size, coneHeight: of('h0') }, groupsInSeries: of('n') };
}

function screwOf(inputs: unknown, n: Reader): Screw | undefined {
  const form = valueAt(inputs, 'form') as ThreadForm | null;
  if (form === null) return undefined;
  const thread = {
    pitchDiameter: pitchDiameter(form, { majorDiameter: n('d'), pitch: n('P') }),
    pitch: n('P'),
    halfAngle: threadHalfAngle[form],
  };
  const ring = { outerDiameter: n('Do'), innerDiameter: n('Di') };
  const collar = { collarFriction: n('muc'), collarDiameter: wornCollarDiameter(ring) };
  return screwOnThread(thread, { starts: n('starts'), threadFriction: n('mu'), ...collar });
}

function millOf(letter: string): Mill {
  const inputs = derivedMills[letter]?.inputs;
  const n = readerOf(inputs);
  const wheels = { wheelDiameter1: n('D1'), wheelDiameter2: n('D2'), centreDistance: n('C') };
  const halfAngle = strandHalfAngle(wheels);
  const loop = loopLength({ ...wheels, thickness: n('t') });
  const area = sectionArea({ width: n('body'), thickness: n('t') });
  const tension = strandForce(n('target'), area);
  const force = wheelForce(tension, halfAngle);
  const stack = stackOf(inputs);
  const springs = [
    ...(typeof valueAt(inputs, 'ks') === 'number' ? [n('ks')] : []),
    ...(stack === undefined ? [] : [stackStiffness(stack, force)]),
  ];
  return {
    n,
    inputs,
    wheels,
    halfAngle,
    loop,
    area,
    tension,
    wheelForce: force,
    thrust: force / n('adv'),
    bandStiffness: bandStiffness({ ...steel, area }, loop, halfAngle),
    supportStiffness: seriesStiffness([n('kf'), ...springs]),
    stack,
    screw: screwOf(inputs, n),
  };
}

/** The six by letter. */
export const mills: Readonly<Record<string, Mill>> = Object.fromEntries(
  Object.keys(derivedMills).map((letter) => [letter, millOf(letter)]),
);

/** Figures of one mill by the name of the output. */
export type MillFigures = Readonly<Record<string, number>>;

export const inDegrees = (angle: number): number => (angle * 180) / Math.PI;
