/** Beside a measurement that is no use: the way to what lacks, where that is turns of the hand. */
import { part } from '../kit/part.tsx';
import { turnsLacking } from './hand-turns.ts';

/** The way there; from another part to the part of the readings, which opens. */
export const TurnsLead = part<{ readonly to: 'readings' | 'turns-asked' }>(({ to }, sheet) =>
  turnsLacking(sheet).length > 0 ? (
    <div class="guards">
      <p class="guard is-warn">
        <a href={`#${to}`}>Fill in the turns of the hand first</a>: it seems to have passed zero.
      </p>
    </div>
  ) : null,
);
