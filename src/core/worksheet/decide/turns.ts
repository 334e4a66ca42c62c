/**
 * Stiffness seen at the wheel, from turns noted beside the torques: how much of the turning goes
 * into the frame.
 * Units: SI only (N/m, N, m).
 * Source: springs in series, derived in turns.ts; two readings out of the toe, never the first turns.
 */
import { bandStiffness } from '../../loop/band-stiffness.ts';
import { loopLength } from '../../loop/geometry.ts';
import { strandForce } from '../../section.ts';
import { frameCompliance, isFrameResolved, totalStiffness } from '../../turns.ts';
import type { Worksheet } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { MeasuredPoint, PointsResult } from '../measure/line.ts';
import type { Outcome } from '../outcome.ts';
import { ready, refused, whenReady } from '../outcome.ts';
import { pullOf } from '../predict/pull.ts';
import { type StrandsResult, secondWheel } from '../predict/section.ts';
import type { EfficiencyResult } from './efficiency.ts';

/** Stiffness of everything together, of the band by calculation, and what is left for the rest. */
export interface TurnsResult {
  readonly totalStiffness: number; // N/m
  readonly bandStiffness: number; // N/m, rolled round
  readonly supportStiffness: number | undefined; // N/m, frame and springs; undefined where turns cannot show it
  readonly fewerTurnsThanBand: boolean; // turns that the band alone would need are missing
  readonly operands: StrandsResult & {
    readonly wheelForce: number; // N, its rise between the two readings
    readonly turns: number; // between them
    readonly lead: number; // m
    readonly advantage: number;
    readonly straightStress: number; // Pa, at the lower of the two readings
  };
}

/** From the lowest to the highest reading of a series that is out of the toe and has its turns; needs two. */
export function worksheetTurns(
  worksheet: Worksheet,
  pointsOutcome: Outcome<PointsResult>,
  efficiencyOutcome: Outcome<EfficiencyResult>,
): Outcome<TurnsResult> {
  const spring = worksheet.mill.strands === 'one' ? stripSpring(worksheet) : loopSpring(worksheet);
  const span = whenReady({ points: pointsOutcome }, ({ points }) =>
    widestSpan(points.points.filter(({ inToe }) => !inToe)),
  );
  return whenReady({ spring, span, efficiency: efficiencyOutcome }, (known) => {
    const { area, drive, advantage, strandCount, strandHalfAngle } = known.efficiency.operands;
    if (drive.kind !== 'screw') return { ready: false, waitsFor: ['readings'] }; // nothing to count
    const { turns, stress, straightStress, doubt } = known.span;
    const strands = { strandCount, strandHalfAngle };
    const force = pullOf(strandForce(stress, area), strands);
    const reading = { turns, wheelForce: force, lead: drive.lead, advantage };
    const ownStiffness = known.spring.stiffnessOf(area, strandHalfAngle);
    const total = totalStiffness(reading);
    const compliance = frameCompliance(reading, { bandStiffness: ownStiffness });
    return ready({
      totalStiffness: total,
      bandStiffness: ownStiffness,
      supportStiffness: isFrameResolved(compliance, doubt / total) ? 1 / compliance : undefined,
      fewerTurnsThanBand: compliance < 0,
      operands: { ...reading, ...strands, straightStress },
    });
  });
}

/** The steel as a spring, N/m, by its section and the lean of its strands. */
interface Spring {
  readonly stiffnessOf: (area: number, strandHalfAngle: number) => number;
}

/** The loop, rolled round its wheels. */
function loopSpring({ mill, band }: Worksheet): Outcome<Spring> {
  const sizes = knownInputs({
    wheelDiameter1: ['mill.wheelDiameter1', mill.wheelDiameter1],
    wheelDiameter2: secondWheel(mill),
    centreDistance: ['mill.centreDistance', mill.centreDistance],
    thickness: ['band.thickness', band.thickness],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
  });
  return whenReady<{ sizes: typeof sizes }, Spring>({ sizes }, ({ sizes }) =>
    ready<Spring>({
      stiffnessOf: (area, strandHalfAngle) =>
        bandStiffness({ ...sizes, area }, loopLength(sizes), strandHalfAngle),
    }),
  );
}

/** A single strip, E·A over its length. */
function stripSpring({ mill, band }: Worksheet): Outcome<Spring> {
  const known = knownInputs({
    length: ['mill.stripLength', mill.stripLength],
    youngsModulus: ['band.youngsModulus', band.youngsModulus],
  });
  return whenReady<{ known: typeof known }, Spring>(
    { known },
    ({ known: { length, youngsModulus } }) =>
      ready<Spring>({ stiffnessOf: (area) => (youngsModulus * area) / length }),
  );
}

interface TurnedSpan {
  readonly turns: number;
  readonly stress: number; // Pa
  readonly straightStress: number; // Pa, at its lower end
  readonly doubt: number; // relative standard uncertainty of the stress, from the dial's repeatability
}

type TurnedPoint = MeasuredPoint & { readonly turns: number };

/** The span of the series that shows most: turns are counted anew in each. */
function widestSpan(points: readonly MeasuredPoint[]): Outcome<TurnedSpan> {
  const numbers = [...new Set(points.map(({ series }) => series))];
  const spans = numbers.map((number) =>
    turnedSpan(points.filter(({ series }) => series === number)),
  );
  const widest = spans
    .filter((span) => span.ready)
    .reduce<TurnedSpan | undefined>((a, b) => (a && a.stress >= b.stress ? a : b), undefined);
  return widest ? ready(widest) : (spans[0] ?? { ready: false, waitsFor: ['readings'] });
}

function turnedSpan(points: readonly MeasuredPoint[]): Outcome<TurnedSpan> {
  const turned = points
    .filter((point): point is TurnedPoint => point.turns !== undefined)
    .sort((a, b) => a.torque - b.torque);
  const [first, last] = [turned[0], turned.at(-1)];
  if (first === undefined || last === undefined || first === last)
    return { ready: false, waitsFor: ['readings'] };
  const turns = last.turns - first.turns;
  const stress = last.stress - first.stress;
  if (turns <= 0 || stress <= 0) return refused('turnsFall', { turns, stress }, ['readings']);
  const doubt = Math.hypot(first.sdStress, last.sdStress) / stress;
  return ready({ turns, stress, straightStress: first.stress, doubt });
}
