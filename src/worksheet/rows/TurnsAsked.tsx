/** Asks whether the hand passed zero, where the readings look like it, and writes its turns if it did. */
import { PartLink } from '../kit/PartLink.tsx';
import { part } from '../kit/part.tsx';
import {
  passesSaid,
  passesUntold,
  turnsButton,
  turnsLacking,
  turnsSaid,
  writeTurns,
} from './hand-turns.ts';

/** What is to be typed before turns can be counted. */
const TravelAsked = part((_, sheet) => {
  const passes = passesUntold(sheet);
  return passes.length > 0 ? (
    <p class="guard is-warn">
      {passesSaid(passes, sheet.shown())}{' '}
      <PartLink to="rig">Enter the travel in one turn of the hand</PartLink>, and the turns can be
      filled in here.
    </p>
  ) : null;
});

/** What the readings tell, with its button; empty while no turns lack. */
export const TurnsAsked = part((_, sheet) => {
  const [lacking, shown] = [turnsLacking(sheet), sheet.shown()];
  return (
    <div class="turns-asked no-print" id="turns-asked" aria-live="polite">
      <TravelAsked />
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
