/** The line over the sheet: which sheet is on the table, and what can be done with it. */
import type { ComponentType, JSX } from 'preact';
import type { Binned, ShelfItem } from '../state/store.ts';
import { momentText, notKeptSentence } from '../words/kept-words.ts';
import type { Earlier, Keeping, KeepingActs } from './Keeping.tsx';

/** What the desk does. */
export interface DeskActs extends KeepingActs {
  readonly lookUpKept: () => void;
  readonly open: (id: string) => void;
  readonly add: () => void;
  readonly copy: () => void;
  readonly remove: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly share: () => void;
  readonly saveFile: () => void;
  readonly openFile: (file: File) => void;
  readonly example: (place: number) => void;
  readonly print: (what: 'sheet' | 'card') => void;
}

/** What the desk shows; as the page is built it does nothing yet, and stands for the room that it takes. */
export interface DeskView {
  readonly id?: string;
  readonly kept: readonly ShelfItem[];
  readonly isBlank: boolean;
  readonly savedAt?: number | undefined; // ms since 1970
  readonly notKept?: readonly string[]; // names of the sheets that the browser refuses to keep
  readonly notice?: string;
  readonly spoken?: string;
  readonly removed?: string | undefined; // the sheet that was deleted last
  readonly Keeping?: typeof Keeping | undefined; // fetched when its fold is opened
  readonly versions?: readonly Earlier[];
  readonly bin?: readonly Binned[];
  readonly unread?: number;
  readonly canUndo?: boolean;
  readonly canRedo?: boolean;
  readonly Sharing?: ComponentType | undefined; // fetched with the first press
  readonly examples: readonly string[]; // names of the invented mills, the fitting one first
  readonly act?: DeskActs;
}

/** Names of sheets; of several with the same name the later ones are numbered. */
function named(kept: readonly ShelfItem[]): readonly ShelfItem[] {
  const names = kept.map(({ label }) => label || 'Mill without a name');
  return kept.map(({ id }, at) => {
    const place = names.slice(0, at).filter((name) => name === names[at]).length;
    return { id, label: place === 0 ? `${names[at]}` : `${names[at]} (${place + 1})` };
  });
}

function Picker({ view }: { readonly view: DeskView }): JSX.Element {
  const isKept = view.kept.some(({ id }) => id === view.id);
  return (
    <label class="desk-picker">
      <span class="label">Open sheet</span>
      <select
        class="box"
        value={view.id}
        onChange={(event) => view.act?.open(event.currentTarget.value)}
      >
        {!isKept && <option value={view.id}>A new, empty sheet</option>}
        {named(view.kept).map(({ id, label }) => (
          <option value={id} key={id}>
            {label}
          </option>
        ))}
      </select>
      {view.savedAt !== undefined && (
        <span class="hint">Saved on this device at {momentText(view.savedAt, Date.now())}</span>
      )}
    </label>
  );
}

function Examples({ view }: { readonly view: DeskView }): JSX.Element {
  return (
    <div class="desk-offer">
      <p>Nothing is filled in yet. To see how it works, open an invented mill:</p>
      {view.examples.map((name, place) => (
        <button class="button" type="button" key={name} onClick={() => view.act?.example(place)}>
          {name}
        </button>
      ))}
    </div>
  );
}

function Steps({ view }: { readonly view: DeskView }): JSX.Element {
  return (
    <div class="desk-tools">
      <button class="button plain" type="button" disabled={!view.canUndo} onClick={view.act?.undo}>
        Undo
      </button>
      <button class="button plain" type="button" disabled={!view.canRedo} onClick={view.act?.redo}>
        Redo
      </button>
    </div>
  );
}

function Tools({ view }: { readonly view: DeskView }): JSX.Element {
  const take = (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file) view.act?.openFile(file);
    input.value = '';
  };
  return (
    <div class="desk-tools">
      <button class="button plain" type="button" onClick={view.act?.add}>
        New sheet
      </button>
      <button class="button plain" type="button" onClick={view.act?.copy}>
        Copy this sheet
      </button>
      <button
        class="button plain"
        type="button"
        id="share"
        aria-expanded={view.Sharing !== undefined}
        onClick={view.act?.share}
      >
        Share
      </button>
      <button class="button plain" type="button" onClick={view.act?.saveFile}>
        Save a file
      </button>
      <label class="button plain file-button">
        Open a file
        <input
          type="file"
          accept=".json,application/json"
          onChange={(event) => take(event.currentTarget)}
        />
      </label>
      <button class="button plain" type="button" onClick={() => view.act?.print('sheet')}>
        Print the sheet
      </button>
      <button class="button plain" type="button" onClick={view.act?.remove}>
        Delete
      </button>
    </div>
  );
}

function KeptFold({ view }: { readonly view: DeskView }): JSX.Element {
  const look = (fold: HTMLDetailsElement) => {
    if (fold.open) view.act?.lookUpKept();
  };
  return (
    <details class="desk-keeping" onToggle={(event) => look(event.currentTarget)}>
      <summary>Earlier versions, deleted sheets, backup</summary>
      {view.Keeping && (
        <view.Keeping
          versions={view.versions ?? []}
          bin={view.bin ?? []}
          unread={view.unread ?? 0}
          act={view.act}
        />
      )}
    </details>
  );
}

/** Picker, tools, offer of an example, and what there is to tell. */
export function Desk({ view }: { readonly view: DeskView }): JSX.Element {
  return (
    <>
      <div class="desk-row">
        <Picker view={view} />
        <Steps view={view} />
      </div>
      {view.isBlank && <Examples view={view} />}
      <div role="status" class="desk-notice">
        {view.notice && <p>{view.notice}</p>}
        {view.notKept && view.notKept.length > 0 && (
          <p class="refusal">{notKeptSentence(view.notKept)}</p>
        )}
      </div>
      <p role="status" class="visually-hidden">
        {view.spoken || null}
      </p>
      {view.removed && (
        <button class="button" type="button" onClick={() => view.act?.putBack(view.removed ?? '')}>
          Put it back
        </button>
      )}
      <details class="desk-more">
        <summary>New sheet, share, file, print</summary>
        <Tools view={view} />
        {view.Sharing && <view.Sharing />}
        <KeptFold view={view} />
      </details>
    </>
  );
}
