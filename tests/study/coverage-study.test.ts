/** The study of coverage in short: a coarse grid, few series, one seed; the full one is a script. */
import { describe, expect, it } from 'vitest';
import { studyTorque, studyTurns, torqueTable } from './study.ts';
import { fullGrid, torqueCases } from './torque-cases.ts';
import { turnsCases } from './turns-cases.ts';

// Simulated while the file loads: a loaded machine must not run into the time limit of a test.
const grid = { ...fullGrid, counts: [6, 10] };
const cells = studyTorque(torqueCases(grid), 20, 1);
const { firstReading, needle, ruler, upperHalf, envelope } = torqueTable(cells);
const ofTen = torqueTable(cells, ({ count }) => count === 10).envelope;
const late = studyTorque(torqueCases({ ...grid, counts: [10], firstLoad: 0.1 }), 20, 2);

describe('zero from torque, simulated', () => {
  it('ranks the ways by error: first reading, needle, ruler, upper half, envelope', () => {
    expect(firstReading.rmse).toBeGreaterThan(needle.rmse);
    expect(needle.rmse).toBeGreaterThan(3 * ruler.rmse);
    expect(ruler.rmse).toBeGreaterThan(upperHalf.rmse);
    expect(upperHalf.rmse).toBeGreaterThan(1.15 * envelope.rmse);
  });
  it('holds the truth in the interval of the envelope at least 97 times in 100', () => {
    expect(envelope.coverage).toBeGreaterThan(0.97);
    expect(envelope.rmse).toBeLessThan(15e-6);
    expect(envelope.meanBias).toBeLessThan(6e-6);
  });
  it('holds it in the interval of the upper half 92 to 97 times in 100, which is wider', () => {
    expect(upperHalf.coverage).toBeGreaterThan(0.92);
    expect(upperHalf.coverage).toBeLessThan(0.97);
    expect(upperHalf.halfWidth).toBeGreaterThan(envelope.halfWidth ?? 0);
  });
  it('has a narrower interval when the first tenth of the load is left out', () => {
    const { coverage, halfWidth, rmse } = torqueTable(late).envelope;
    expect(coverage).toBeGreaterThan(0.95);
    expect(halfWidth).toBeLessThan(0.9 * (ofTen.halfWidth ?? 0));
    expect(rmse).toBeLessThan(ofTen.rmse);
  });
});

describe('zero from turns, simulated', () => {
  const turns = turnsCases([8, 10], fullGrid.noises);
  const plain = studyTurns(
    turns.filter(({ hidesKnee }) => !hidesKnee),
    40,
    3,
  );
  const hidden = studyTurns(
    turns.filter(({ hidesKnee }) => hidesKnee),
    40,
    4,
  );
  it('holds the truth in the brackets that are accepted, at the price of width', () => {
    expect(plain.bracket?.coverage).toBeGreaterThan(0.97);
    expect(plain.bracket?.halfWidth).toBeGreaterThan(2 * (envelope.halfWidth ?? 0));
    expect(plain.bracket?.rmse).toBeLessThan(plain.firstReading.rmse / 2);
  });
  it('accepts most series that show a knee and few that hide it', () => {
    expect(plain.accepted).toBeGreaterThan(0.6);
    expect(hidden.accepted).toBeLessThan(0.3);
  });
});
