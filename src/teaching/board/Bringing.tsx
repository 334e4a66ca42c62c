/** Where sheets are brought: files that are chosen or dropped, and links that are pasted. */
import type { JSX } from 'preact';

const MOST_LETTERS = 4_000_000; // of pasted links: sixty of the longest, and more

/** What this part does. */
export interface BringingView {
  readonly links: string;
  readonly isBusy: boolean;
  readonly typeLinks: (text: string) => void;
  readonly takeFiles: (files: readonly File[]) => void;
  readonly takeLinks: () => void;
}

function Files({ takeFiles, isBusy }: BringingView): JSX.Element {
  return (
    <div class="board-files">
      <label for="board-files">
        Worksheet files: choose many at once, or drop them on this page
      </label>
      <input
        id="board-files"
        type="file"
        accept=".json,application/json"
        multiple
        disabled={isBusy}
        onChange={({ currentTarget }) => {
          takeFiles([...(currentTarget.files ?? [])]);
          currentTarget.value = ''; // so that the same file can be chosen again
        }}
      />
    </div>
  );
}

/** Files and links. */
export function Bringing(view: BringingView): JSX.Element {
  const { links, typeLinks, takeLinks, isBusy } = view;
  return (
    <div class="board-bringing no-print">
      <Files {...view} />
      <div class="board-links">
        <label for="board-links">Links to worksheets, one a line</label>
        <textarea
          id="board-links"
          class="box"
          rows={3}
          maxLength={MOST_LETTERS}
          autocomplete="off"
          spellcheck={false}
          value={links}
          onInput={({ currentTarget }) => typeLinks(currentTarget.value)}
        />
        <button
          class="button"
          type="button"
          disabled={isBusy || links.trim() === ''}
          onClick={takeLinks}
        >
          Add the links
        </button>
      </div>
    </div>
  );
}
