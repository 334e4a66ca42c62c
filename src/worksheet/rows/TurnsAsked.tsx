/** Asks whether the hand passed zero, where the readings look like it, and writes its turns if it did. */
import { part } from '../kit/part.tsx';
import { turnsButton, turnsLacking, turnsSaid, writeTurns } from './hand-turns.ts';

/** What the readings tell, with its button; empty while no turns lack. */
export const TurnsAsked = part((_, sheet) => {
  const [lacking, shown] = [turnsLacking(sheet), sheet.shown()];
  return (
    <div class="turns-asked no-print" id="turns-asked" aria-live="polite">
      {lacking.length > 0 && (
        <>
          <p class="guard is-warn">{turnsSaid(lacking, shown)}</p>
          <button class="button" type="button" onClick={() => writeTurns(sheet, lacking)}>
            {turnsButton(lacking, shown)}
          </button>
        </>
      )}
    </div>
  );
});
