/**
 * Whether the load that a measurement is to go up to stays within the limits, and the highest that does.
 * Units: SI only (N·m of a torque, Pa of a pressure).
 * Source: definition; the limits are those of rails.ts and the tension in use, held against the stress of
 * stress-at-load.ts with its expanded uncertainty.
 */
import { workingStress } from '../../assumptions.ts';
import type { Worksheet } from '../inputs.ts';
import type { MeasuredResult } from '../measure/measured.ts';
import type { Outcome } from '../outcome.ts';
import type { Chain } from '../predict/chain.ts';
import { type WorksheetGuard, worksheetRails } from './rails.ts';
import { type StressAtLoad, stressAtLoad } from './stress-at-load.ts';

/** A load that goes too far, by what, and the highest that does not, where there is one. */
export interface TopLoadTrouble {
  readonly guard: WorksheetGuard;
  readonly highest: number | undefined; // N·m or Pa
}

type Reached = Omit<StressAtLoad, 'by'>;
type Limit = (reached: Reached, worksheet: Worksheet, chain: Chain) => Guard;
type Guard = WorksheetGuard | undefined;

const halvings = 20; // the load to a millionth

/** One of the rails, by what it may find. */
const railOf =
  (...codes: readonly WorksheetGuard['code'][]): Limit =>
  ({ stress, expandedUncertainty }, worksheet, chain) => {
    const reached = { stress, expandedUncertainty, input: 'target.stress' } as const;
    const rails = worksheetRails(worksheet, reached, chain);
    return rails.ready ? rails.found.find(({ code }) => codes.includes(code)) : undefined;
  };

/** That a stress may be above those in use on small mills, uncertainty included. */
export function beyondPractice({ stress, expandedUncertainty }: Reached): Guard {
  const highest = stress + expandedUncertainty;
  if (highest <= workingStress.high) return undefined;
  const values = { stress, highest, ...workingStress };
  return { code: 'outsideCommonPractice', level: 'warn', values, inputs: ['target.stress'] };
}

/** In the order in which they count: what the makers allow, what the steel bears, what others do. */
const LIMITS: readonly Limit[] = [
  railOf('tooThickForWheel'),
  railOf('aboveBandLimit', 'mayExceedBandLimit'),
  railOf('aboveMillLimit', 'mayExceedMillLimit'),
  railOf('beyondYieldShare'),
  beyondPractice,
];

/** The highest load that a limit lets pass, below one that it does not. */
function highestWithin(isPassed: (load: number) => boolean, load: number): number {
  let [low, high] = [0, load];
  for (let i = 0; i < halvings; i++) {
    const middle = (low + high) / 2;
    if (isPassed(middle)) high = middle;
    else low = middle;
  }
  return low;
}

/**
 * What is wrong with a top load, in the order of `LIMITS`; empty while nothing is, or nothing can be told. A limit that
 * whoever keeps to the ones before it cannot pass is left out.
 */
export function topLoadTroubles(
  worksheet: Worksheet,
  chain: Chain,
  measured: Outcome<MeasuredResult>,
  top: number,
): readonly TopLoadTrouble[] {
  const reachedAt = (load: number) => stressAtLoad({ theory: chain.theory, measured }, load);
  let allowed = top;
  return LIMITS.flatMap((limit) => {
    const guardAt = (load: number): Guard => {
      const reached = reachedAt(load);
      return reached && limit(reached, worksheet, chain);
    };
    const guard = guardAt(allowed) && guardAt(top);
    if (!guard) return [];
    allowed = highestWithin((load) => guardAt(load) !== undefined, allowed);
    return [{ guard, highest: reachedAt(allowed) ? allowed : undefined }];
  });
}
