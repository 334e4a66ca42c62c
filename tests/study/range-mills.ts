/**
 * Mills whose truth is known, for the study of ranges: five of the six invented mills (the sixth is hydraulic) and any
 * number from the bench, each as a sheet with everything filled in as its owner would know it.
 * Units: SI only (m, N·m, Pa).
 * Source: how far off an owner is, as assumptions.ts has it: each number drawn evenly from within its half-width.
 */
import { screwSpreads, sectionHalfWidths } from '../../src/core/assumptions.ts';
import { type BenchMill, benchMill } from '../../src/core/bench/mill.ts';
import { benchSeries, benchStress } from '../../src/core/bench.ts';
import { type RandomSource, randomSource } from '../../src/core/random.ts';
import { emptyReading } from '../../src/core/worksheet/empty.ts';
import {
  gaugeLengthHalfWidth,
  labelThickness,
  wrenchScale,
} from '../../src/core/worksheet/own-assumptions.ts';
import { idealPull } from '../../src/core/worksheet/predict/pull.ts';
import {
  emptyWorksheet,
  type Worksheet,
  type WorksheetReading,
  worksheetChain,
} from '../../src/core/worksheet.ts';
import { worksheetMills } from '../core/worksheet/fixtures/mills.ts';

/** A mill with all that its owner can find out, and the stress that its band truly has at the top torque. */
export interface StudyMill {
  readonly sheet: Worksheet; // everything filled in, readings too
  readonly torque: number; // N·m, as the wrench says
  readonly labelThickness: number; // m
  readonly truth: number; // Pa
  readonly threeSeries: readonly WorksheetReading[]; // its readings, and twice more with the dial set anew
}

/** What the simulation of each invented mill's readings had in its screw. */
const TRUE_EFFICIENCY = { A: 0.2952, B: 0.1855, C: 0.1158, E: 0.1218, F: 0.4241 } as const;

/** The five invented mills that have a screw. */
export const inventedMills: readonly StudyMill[] = Object.entries(TRUE_EFFICIENCY).map(
  ([letter, efficiency]) => {
    const sheet = worksheetMills[letter as keyof typeof TRUE_EFFICIENCY];
    const { theory } = worksheetChain(sheet);
    if (!theory.ready) throw new RangeError(`mill ${letter} must be filled in`);
    const torque = Math.max(...sheet.readings.map((reading) => reading.torque ?? 0));
    const { operands } = theory;
    return {
      sheet,
      torque,
      labelThickness: sheet.band.thickness ?? 0,
      truth: (efficiency * idealPull(operands) * (torque - operands.dragTorque)) / operands.area,
      threeSeries: sheet.readings, // theirs are printed once
    };
  },
);

const STRESS = { low: 90e6, high: 140e6 }; // Pa, at which people stop
const STEPS = 10;
const RELEASE = 15e-6; // m: a clamp that comes back further off has slipped, and the series is taken again
const THREAD_FRICTION = { low: 0.1, high: 0.18 }; // what a handbook promises of a greased thread
const WASHER_FRICTION = 0.12; // the middle of what it promises of a greased washer

/** Draws from within a half-width. */
const within =
  ({ uniform }: RandomSource) =>
  (halfWidth: number): number =>
    halfWidth * (2 * uniform() - 1);

/** The torque at which a bench mill's band has a stress, by steps of a tenth. */
function torqueAt(mill: BenchMill, stress: number): number {
  let torque = 1;
  while (benchStress(mill, torque) < stress) torque += 0.1;
  return torque;
}

const ATTEMPTS = 10; // for each series

/** A series without a slip that shows on release, taken anew until there is one; the wrench is off by a scale. */
function takenSeries(mill: BenchMill, torques: readonly number[], number: number, scale: number) {
  const attempts = Array.from({ length: ATTEMPTS }, (_, at) => ATTEMPTS * (number - 1) + at);
  const good = attempts.find((at) => Math.abs(benchSeries(mill, torques, at).released) <= RELEASE);
  const { readings } = benchSeries(mill, torques, good ?? attempts.at(-1));
  return readings.map(({ torque, ...rest }) => ({
    ...emptyReading,
    ...rest,
    torque: torque / scale,
    series: number,
  }));
}

function tensionerOf({ known, hidden }: BenchMill, off: (halfWidth: number) => number) {
  const ring = {
    outerDiameter: known.collarDiameter * 1.3,
    innerDiameter: known.collarDiameter * 0.7,
  };
  const washer = { kind: 'washer', frictionLow: WASHER_FRICTION, frictionHigh: undefined } as const;
  return {
    ...emptyWorksheet.tensioner,
    thread: { kind: 'designation', designation: known.screwThread } as const,
    friction: { kind: 'friction', ...THREAD_FRICTION } as const,
    collar: known.collarIsBearing
      ? ({ kind: 'bearing', ...ring } as const)
      : { ...washer, ...ring },
    dragTorque: Math.max(0, hidden.dragTorque + off(0.15)),
  };
}

/** A mill of the bench, with its owner's errors. */
export function benchStudyMill(seed: number): StudyMill {
  const drawn = benchMill(seed);
  const random = randomSource(seed + 0.5 * 2 ** 40);
  const off = within(random);
  const meanDiameter = drawn.hidden.screw.meanDiameter * (1 + off(screwSpreads.pitchDiameter));
  const mill: BenchMill = {
    ...drawn,
    hidden: { ...drawn.hidden, screw: { ...drawn.hidden.screw, meanDiameter } },
  };
  const { known } = mill;
  const top = torqueAt(mill, STRESS.low + (STRESS.high - STRESS.low) * random.uniform());
  const torques = Array.from({ length: STEPS }, (_, i) => (top * (i + 1)) / STEPS);
  const scale = 1 + off(wrenchScale);
  const series = [1, 2, 3].map((number) => takenSeries(mill, torques, number, scale));
  const sheet: Worksheet = {
    ...emptyWorksheet,
    mill: {
      wheelDiameter1: known.wheelDiameter,
      wheelDiameter2: known.wheelDiameter,
      centreDistance: known.centreDistance,
    },
    band: {
      ...emptyWorksheet.band,
      bodyWidth: known.bodyWidth + off(sectionHalfWidths.bodyWidth),
      thickness: known.thickness + off(sectionHalfWidths.thickness),
      thicknessFrom: 'micrometer',
    },
    tensioner: tensionerOf(mill, off),
    rig: {
      ...emptyWorksheet.rig,
      gaugeLength: known.gaugeLength + off(gaugeLengthHalfWidth),
      graduation: 2 * known.dialStep,
      readTo: known.dialStep,
      travelPerTurn: known.dialTurn,
    },
    readings: series[0] ?? [],
  };
  return {
    sheet,
    torque: top / scale,
    labelThickness: known.thickness * (1 + off(labelThickness)),
    truth: benchStress(mill, top),
    threeSeries: series.flat(),
  };
}
