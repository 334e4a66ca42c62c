/** What is kept besides the open sheet: its earlier versions, the bin, and everything in one file. */
import type { JSX } from 'preact';
import { KEPT } from '../io/limits.ts';
import type { Binned } from '../state/store.ts';
import { momentText } from '../words/kept-words.ts';

/** An earlier version of the open sheet, by when it was kept. */
export interface Earlier {
  readonly savedAt: number; // ms since 1970
}

/** What this part does. */
export interface KeepingActs {
  readonly takeVersion: (savedAt: number) => void;
  readonly putBack: (id: string) => void;
  readonly forget: (id: string) => void;
  readonly saveAll: () => void;
  readonly saveUnread: () => void;
}

/** What it shows. */
export interface KeepingProps {
  readonly versions: readonly Earlier[];
  readonly bin: readonly Binned[];
  readonly unread: number; // sheets on the shelf that could not be read
  readonly act?: KeepingActs | undefined;
}

function Versions({ versions, act }: KeepingProps): JSX.Element {
  if (versions.length === 0) return <p>There are none yet: one is kept for each hour of work.</p>;
  return (
    <>
      <p>Press one to look at it. Undo brings the newest back.</p>
      <ul class="desk-tools">
        {versions.map(({ savedAt }) => (
          <li key={savedAt}>
            <button class="button plain" type="button" onClick={() => act?.takeVersion(savedAt)}>
              {momentText(savedAt, Date.now())}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function Bin({ bin, act }: KeepingProps): JSX.Element {
  if (bin.length === 0) return <p>Empty. A deleted sheet stays here for {KEPT.binDays} days.</p>;
  return (
    <ul class="desk-bin">
      {bin.map(({ id, label, removedAt }) => (
        <li key={id}>
          <span>
            {label || 'Mill without a name'}, deleted {momentText(removedAt, Date.now())}
          </span>
          <button class="button plain" type="button" onClick={() => act?.putBack(id)}>
            Put it back
          </button>
          <button class="button plain" type="button" onClick={() => act?.forget(id)}>
            Delete for good
          </button>
        </li>
      ))}
    </ul>
  );
}

/** What stands in the fold. */
export function Keeping(props: KeepingProps): JSX.Element {
  return (
    <>
      <h2>Earlier versions of this sheet</h2>
      <Versions {...props} />
      <h2>Deleted sheets</h2>
      <Bin {...props} />
      <h2>Backup</h2>
      <p>
        One file with all your sheets. “Open a file” reads it again, here or on another device, and
        adds to what is there.
      </p>
      <button class="button plain" type="button" onClick={props.act?.saveAll}>
        Save all sheets in one file
      </button>
      {props.unread > 0 && (
        <button class="button plain" type="button" onClick={props.act?.saveUnread}>
          Save what could not be read
        </button>
      )}
    </>
  );
}
