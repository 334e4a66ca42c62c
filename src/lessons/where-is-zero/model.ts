/**
 * Where is zero: a band that straightens and stretches at once, what a zero costs that is set too early or too late, and
 * series on the bench in which the reader, the classroom rule and all readings together place it.
 * Units: SI.
 * Source: Hooke's law (core/elasticity); core/bench and core/zero through the modules beside it; the mill is invented.
 */
import { stress } from '../../core/elasticity.ts';
import { defineModel } from '../../models/define-model.ts';
import { causes } from './causes.worked.ts';
import { INPUTS } from './inputs.ts';
import { OUTPUTS } from './outputs.ts';
import { said } from './repeats/said.worked.ts';
import { found } from './series/found.worked.ts';
import { placeOfSeries } from './taking.ts';
import { bandAt, type Side } from './toe/curl.ts';
import { atRest } from './toe/rest.worked.ts';

const { drag, topTorque, gaugeLength, youngsModulus } = atRest;
const SMALL_READING = { metric: 1e-5, us: 2.54e-5 } as const; // 0.01 mm, 0.001 in

/** The guess is about the whole way up, with the bar on the hollow side. */
export const asked = { load: topTorque } as const;

/** The stress that a stretch over the gauge length would mean, Pa. */
const stressOf = (elongation: number) => stress({ elongation, gaugeLength }, youngsModulus);

/** Since the band was slack: how far the dial moved, and how much of that was the curl leaving. */
function sinceSlack(load: number, side: Side) {
  const [now, slack] = [bandAt(load, side), bandAt(0, side)];
  const dialFromSlack = now.dial - slack.dial;
  return {
    stress: now.stress,
    stretch: now.stretch,
    straightened: now.toe - slack.toe,
    dialFromSlack,
    slackStress: stressOf(dialFromSlack),
  };
}

/** At the top torque, with the dial set to zero at another one. */
function atTopFrom(setAt: number, side: Side) {
  const top = bandAt(topTorque, side);
  const reading = top.dial - bandAt(setAt, side).dial;
  return { reading, believed: stressOf(reading), error: stressOf(reading) - top.stress };
}

function wrongZeros(setAt: number, side: Side) {
  const [slack, set] = [atTopFrom(0, side), atTopFrom(setAt, side)];
  return {
    slackTopReading: slack.reading,
    slackTopStress: slack.believed,
    slackError: slack.error,
    setTopStress: set.believed,
    setError: set.error,
    stressWhenSet: bandAt(setAt, side).stress,
  };
}

type FoundZeros = (typeof found)[number];

function byClassroom(ways: FoundZeros) {
  const { classroomZero, classroomLow, classroomHigh, classroomStretch } = ways;
  return {
    classroomZero,
    classroomReach: (classroomHigh - classroomLow) / 2,
    classroomStretch,
    classroomStress: stressOf(classroomStretch),
    classroomStressReach: stressOf(ways.classroomStretchReach),
    lineAtHalf: classroomZero + classroomStretch / 2,
    lineAtTop: classroomZero + classroomStretch,
  };
}

function byAllReadings(ways: FoundZeros) {
  const { fullZero, fullLow, fullHigh, fullStretch, fullStretchLow, fullStretchHigh } = ways;
  return {
    fullZero,
    fullLow,
    fullHigh,
    fullStretch,
    fullStress: stressOf(fullStretch),
    fullStressReach: stressOf(fullStretchHigh - fullStretchLow) / 2,
  };
}

/** The series of a number, with the zero of the reader beside the others. */
function seriesValues(series: number, eyeZero: number) {
  const ways = found[placeOfSeries(series)] as FoundZeros;
  const { topReading, trueZero } = ways;
  const eyeOff = eyeZero - trueZero;
  return {
    topReading,
    trueZero,
    ...byClassroom(ways),
    ...byAllReadings(ways),
    eyeStretch: topReading - eyeZero,
    eyeStress: stressOf(topReading - eyeZero),
    eyeOff,
    eyeError: -stressOf(eyeOff),
  };
}

const top = bandAt(topTorque, 'hollow');

/** Load and side to what the dial shows; a wrong zero to its cost; a series and the reader's zero to the other zeros. */
export const whereIsZero = defineModel({
  name: 'where-is-zero',
  inputs: INPUTS,
  outputs: OUTPUTS,
  constants: {
    drag,
    topTorque,
    gaugeLength,
    youngsModulus,
    perHundredth: stressOf(SMALL_READING.metric),
    perThousandth: stressOf(SMALL_READING.us),
    topStress: top.stress,
    topStretch: top.stretch,
    curl: atRest.shift,
    halfTorque: (drag + topTorque) / 2,
    ...said,
    ...causes,
  },
  evaluate: ({ load, side, setAt, series, eyeZero }) => ({
    ...sinceSlack(load, side),
    ...wrongZeros(setAt, side),
    ...seriesValues(series, eyeZero),
  }),
});
