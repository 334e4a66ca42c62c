/** The sheet to take along: what to measure and where, the cautions, and empty rows at the planned torques. */
import type { JSX } from 'preact';
import { SketchCopy } from '../kit/PartSketch.tsx';
import { part } from '../kit/part.tsx';
import { Said } from '../kit/Section.tsx';
import { SLOWLY } from '../words/plan-words.ts';
import { BETWEEN_SERIES, clampSentence, pastStepSentence, TURNS_COUNT } from './along-words.ts';
import { Facts } from './Facts.tsx';
import type { Planned } from './inputs.ts';
import { hasLimit, tooHighOn, topOn } from './limit.ts';
import { ownAnswer } from './planner.ts';
import { plannedOn } from './questions.ts';
import { columnsOf, SeriesTables } from './Series.tsx';

/** On every page, as pages part. */
const Head = part(() => (
  <p class="along-head">
    <b>To take along</b>
    <span>Name</span>
    <span class="along-line">
      <Said path="label" />
    </span>
    <span>Measured on</span>
    <span class="along-line is-short" />
  </p>
));

const Sketches = part((_, sheet) => (
  <div class="along-sketches">
    <SketchCopy id="start" />
    {sheet.shown().load.name === 'torque' && <SketchCopy id="tensioner" />}
    <SketchCopy id="rig" />
  </div>
));

const Cautions = part<{ readonly planned: Planned }>(({ planned }, sheet): JSX.Element => {
  const shown = sheet.shown();
  const { load } = shown;
  return (
    <ul class="along-cautions">
      <li>
        Lock the mill out, take the key, and wait until the wheels are still. Only then touch the
        band.
      </li>
      <li>
        Wear gloves and eye protection. {SLOWLY[load.name]} Stand out of the plane of the band. Stop
        at the makers’ limits, whatever this sheet says.
      </li>
      <li>{clampSentence(planned, shown)}</li>
      <li>
        At each step, read the {load.name} {load.moving}, then read the dial.{' '}
        {sheet.chosen('rig.dialWritten') !== 'together' && TURNS_COUNT}
      </li>
      <li>{pastStepSentence(shown)}</li>
      {planned.plan.series > 1 && <li>{BETWEEN_SERIES}</li>}
      <li>
        At the end, remove bar, dial and clamps, and count them. Let the tension off as the mill’s
        maker says.
      </li>
    </ul>
  );
});

/** How far to go at most: what the band carries there, what is known to be too high, what is still to be asked. */
const Limits = part((_, sheet) => {
  const answer = ownAnswer(sheet);
  const top = topOn(sheet, answer);
  return (
    <div class="along-limits">
      {top && <p class="along-top">{top}</p>}
      {tooHighOn(sheet, answer).map(({ sentence }) => (
        <p key={sentence} class="along-limit">
          {sentence}
        </p>
      ))}
      {!hasLimit(sheet) && (
        <p class="along-ask">
          Before you start, ask what the makers of mill and band allow, and write it above.
        </p>
      )}
    </div>
  );
});

/** How to find the settings, where no top is planned. */
const Finding = part<{ readonly planned: Planned }>(({ planned }, sheet) => {
  const { load } = sheet.shown();
  if (planned.topTorque !== undefined) return null;
  return (
    <p class="along-finding">
      First choose a top {load.name} that both makers allow. Begin at a tenth of it and go up in{' '}
      {planned.plan.steps} even steps. Write each one under “Set to”.
    </p>
  );
});

/** All pages. */
export const Along = part((_, sheet) => {
  const planned = plannedOn(sheet);
  if (planned === undefined || typeof planned === 'string') return null;
  return columnsOf(planned).map((columns, page) => (
    <section key={page} class="along-page" aria-label="Sheet to take along">
      <Head />
      {page === 0 && (
        <>
          <Sketches />
          <Facts />
        </>
      )}
      <Limits />
      <Cautions planned={planned} />
      <Finding planned={planned} />
      <SeriesTables columns={columns} planned={planned} shown={sheet.shown()} />
    </section>
  ));
});
