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
import { ClampStep, LetOffStep, ReadStep, TightenStep } from './Steps.tsx';

/** What the page gives the whole desk. */
export interface WholeProps {
  readonly desk: DeskProps;
  /** What comes when it is first wanted. */
  readonly Lid: ComponentType<{ readonly view: View }> | undefined;
  readonly Tries: ComponentType<{ readonly desk: DeskProps }> | undefined;
  readonly wantTries: () => void;
  readonly isTeachers: boolean;
  readonly notice: string;
  readonly open: (place: Place, isFresh?: boolean) => void;
  readonly copy: (address: string) => void;
  readonly tell: (says: string) => void;
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
        <span class="label">{minutes} minutes at the mill so far</span>
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
          <button class="button" type="button" onClick={carry}>
            Open these readings on the worksheet
          </button>
        </div>
      )}
    </section>
  );
}

/** All of it. */
export function Desk(props: WholeProps) {
  const { desk, Tries } = props;
  return (
    <>
      <Head {...props} />
      <div class="bench-work">
        <Picture view={desk.view} said={desk.said} idPrefix="bench" />
        <div class="bench-steps no-print">
          <ClampStep desk={desk} />
          <TightenStep desk={desk} />
          <ReadStep desk={desk} />
          <LetOffStep desk={desk} />
        </div>
        <PictureNotes view={desk.view} />
      </div>
      <MillCard desk={desk} />
      <details class="bench-more no-print" onToggle={props.wantTries}>
        <summary>Try the slack handle, or pluck the band</summary>
        {Tries ? <Tries desk={desk} /> : <p>One moment.</p>}
      </details>
      <Table {...props} />
      <LidPlace {...props} />
      <Choosing {...props} />
    </>
  );
}
