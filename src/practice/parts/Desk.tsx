/** The whole bench: the drawing that stays in view, the steps under it, the table, the worksheet, the lid, other mills. */
import type { ComponentType } from 'preact';
import { Picture, PictureNotes } from '../drawing/Picture.tsx';
import { addressOf, type Place } from '../state/address.ts';
import type { View } from '../state/view.ts';
import { LEVEL_WORDS } from '../words/level-words.ts';
import { Choosing } from './Choosing.tsx';
import type { DeskProps } from './desk.ts';
import { LidPlace } from './LidPlace.tsx';
import { MillCard } from './MillCard.tsx';
import { Rows } from './Rows.tsx';
import { SlackStep } from './SlackStep.tsx';
import { ClampStep, LetOffStep, ReadStep, TightenStep } from './Steps.tsx';

/** What the page gives the whole desk. */
export interface WholeProps {
  readonly desk: DeskProps;
  /** What comes when it is first wanted. */
  readonly Lid: ComponentType<{ readonly view: View }> | undefined;
  readonly Pluck: ComponentType<{ readonly desk: DeskProps }> | undefined;
  readonly wantPluck: () => void;
  readonly isTeachers: boolean;
  readonly notice: string;
  readonly open: (place: Place, isFresh?: boolean) => void;
  readonly copy: (place: Place, lid?: string) => void;
  readonly tell: (says: string) => void;
  readonly beside: string;
  readonly carry: () => void;
}

/** The mill's name, and how long the work took. */
function Head({ desk, notice }: Pick<WholeProps, 'desk' | 'notice'>) {
  const { bench, minutes } = desk.view;
  return (
    <>
      <p class="bench-name">
        <span>
          Mill {bench.seed}: {LEVEL_WORDS[bench.level][0].toLowerCase()}.{' '}
          {LEVEL_WORDS[bench.level][1]}
        </span>
        <span class="label">
          {minutes} {minutes === 1 ? 'minute' : 'minutes'} at the mill so far
        </span>
      </p>
      <p class="on-paper label">This mill again: {addressOf(bench)}</p>
      {notice !== '' && <p class="bench-notice">{notice}</p>}
    </>
  );
}

/** The table and what it is carried into. */
function Table({ desk, carry }: Pick<WholeProps, 'desk' | 'carry'>) {
  return (
    <section class="bench-table">
      <h2>Your table</h2>
      <Rows desk={desk} />
      {desk.view.rows.length > 0 && (
        <div class="no-print">
          <button
            class="button"
            type="button"
            aria-describedby={desk.view.bench.plucks.length > 0 ? 'bench-note-goes' : undefined}
            onClick={carry}
          >
            Open these readings on the worksheet
          </button>
          {desk.view.bench.plucks.length > 0 && (
            <p class="hint" id="bench-note-goes">
              The last note goes along, as a second opinion under “Theory and measurement”.
            </p>
          )}
        </div>
      )}
    </section>
  );
}

/** The pluck, which not everyone needs: its code comes when it is opened. */
function PluckStep({ desk, Pluck, wantPluck }: Pick<WholeProps, 'desk' | 'Pluck' | 'wantPluck'>) {
  return (
    <details class="bench-more" onToggle={wantPluck}>
      <summary>5 Pluck the tight band: a second opinion</summary>
      {Pluck ? <Pluck desk={desk} /> : <p>One moment.</p>}
    </details>
  );
}

/** All of it. */
export function Desk(props: WholeProps) {
  const { desk } = props;
  return (
    <>
      <Head {...props} />
      <div class="bench-work">
        <Picture view={desk.view} said={desk.said} idPrefix="bench" />
        <div class="bench-steps no-print">
          <SlackStep desk={desk} />
          <ClampStep desk={desk} />
          <TightenStep desk={desk} />
          <ReadStep desk={desk} />
          <PluckStep {...props} />
          <LetOffStep desk={desk} />
        </div>
        <PictureNotes view={desk.view} />
      </div>
      <MillCard desk={desk} />
      <Table {...props} />
      <LidPlace {...props} />
      <Choosing {...props} />
    </>
  );
}
