/** What the lid advises: never what the learner has done already, and never a start at which the handle does not move. */
import { describe, expect, it } from 'vitest';
import { benchLooks, benchMillAt, type Handling, type Lifted } from '../../src/core/bench.ts';
import { liftedFor } from '../../src/practice/lid/lifted.ts';
import { remedyInWords } from '../../src/practice/lid/remedies.ts';
import { apply, type Bench, type Command, freshBench } from '../../src/practice/state/bench.ts';
import { faceOf, viewOf } from '../../src/practice/state/view.ts';
import { fromSi } from '../../src/units/si-value.ts';

const HANDLINGS: readonly Handling[] = [
  { clamps: 'quick', hands: 'bare' },
  { clamps: 'careful', hands: 'gloved' },
];

/** A bench with a series at shares of the usual torque, each dial read right. */
function worked(bench: Bench, how: Handling, shares: readonly number[]): Bench {
  const mill = benchMillAt(bench.seed, bench.level);
  const unit = faceOf(mill) === 'inch' ? 0.0254 : 1e-3;
  const torques = shares.map((share) => share * mill.told.usualTorque);
  const { looks } = benchLooks(mill, { ...how, attempt: bench.taken.length, torques });
  const commands = torques.flatMap((torque, at): Command[] => {
    const dial = ((looks[at + 1]?.position as number) * mill.known.dialStep) / unit;
    return [
      { do: 'turn', torque },
      { do: 'write', dial: dial.toFixed(4) },
    ];
  });
  const start: Command[] = [{ do: 'handle', how }, { do: 'clamp' }];
  return [...start, ...commands, { do: 'letOff' } as const].reduce(apply, bench);
}

const EVEN = Array.from({ length: 10 }, (_, at) => (at + 1) / 10);

function remedy(bench: Bench, cause: Lifted['stages'][number]['cause']): string {
  const view = viewOf(bench);
  const lifted = liftedFor(view) as Lifted;
  const stage = lifted.stages.find((each) => each.cause === cause);
  if (!stage) throw new Error(`${cause} must be there`);
  return remedyInWords(stage, lifted, view);
}

const answered = (bench: Bench, text: string) => apply(bench, { do: 'type', box: 'answer', text });

describe('what is advised', () => {
  it('is gloves and careful clamps for those alone who had none', () => {
    const [hasty, careful] = HANDLINGS.map((how) =>
      worked(freshBench(27, 'nasty', 'us'), how, EVEN),
    ) as [Bench, Bench];
    expect(remedy(hasty, 'warmed')).toBe('Wear gloves, and be quick.');
    expect(remedy(careful, 'warmed')).toMatch(/^Not your mistake: gloves kept it small/);
    expect(remedy(hasty, 'slipped')).toMatch(/^Set clamps with care/);
    expect(remedy(careful, 'slipped')).toMatch(/^Not your mistake: even careful clamps/);
    const both = worked(hasty, HANDLINGS[1] as Handling, EVEN);
    expect(remedy(both, 'warmed')).toMatch(/gloves in every series|^Not your mistake|^Wear gloves/);
  });
  it.each(['metric', 'us'] as const)(
    'is a start above the no-load torque, in whole steps, in %s',
    (system) => {
      for (let seed = 1; seed <= 20; seed += 1) {
        const late = worked(
          freshBench(seed, 'nasty', system),
          HANDLINGS[0] as Handling,
          [0.6, 0.65, 0.7, 0.8, 0.9, 1],
        );
        const words = remedy(late, 'toe');
        const steps = Number(/^Start at (\d+)\s/.exec(words)?.[1]);
        const { hidden, told } = benchMillAt(seed, 'nasty');
        expect(steps).toBeGreaterThan(fromSi(hidden.dragTorque, 'torque', system));
        expect(steps).toBeLessThan(fromSi(told.usualTorque / 2, 'torque', system));
        expect(words).not.toContain('Take most rows');
      }
    },
  );
  it('is no start for who began low, and no rows above the half for who took them', () => {
    const spread = worked(freshBench(27, 'nasty', 'us'), HANDLINGS[0] as Handling, EVEN);
    expect(remedy(spread, 'toe')).not.toContain('Start at');
    const low = worked(
      freshBench(27, 'nasty', 'us'),
      HANDLINGS[0] as Handling,
      [0.2, 0.25, 0.3, 0.4, 0.45, 1],
    );
    expect(remedy(low, 'toe')).toBe('Take most rows in the upper half of the load.');
  });
  it('holds the answer against the worksheet only where that finds a stress', () => {
    const good = worked(freshBench(3, 'clean', 'metric'), HANDLINGS[1] as Handling, EVEN);
    const stress = liftedFor(viewOf(good))?.measured?.stress as number;
    expect(remedy(answered(good, (stress / 1e6).toFixed(2)), 'sum')).toMatch(/finds the same/);
    expect(remedy(answered(good, '40'), 'sum')).toMatch(/works out the same rows/);
    const few = worked(freshBench(3, 'clean', 'metric'), HANDLINGS[1] as Handling, [0.5, 0.7, 1]);
    expect(remedy(answered(few, '40'), 'sum')).toMatch(/finds no stress/);
  });
});
