/** The line over the sheet: which sheet is on the table, and what can be done with it. */
import type { JSX } from 'preact';
import type { ShelfItem } from '../state/store.ts';

/** What the desk shows and does. */
export interface DeskView {
  readonly id: string;
  readonly kept: readonly ShelfItem[];
  readonly isBlank: boolean;
  readonly notKept: boolean;
  readonly notice: string;
  readonly spoken: string;
  readonly canPutBack: boolean;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly link: string; // shown where the clipboard is closed
  readonly examples: readonly string[]; // names of the invented mills, the fitting one first
  readonly open: (id: string) => void;
  readonly add: () => void;
  readonly remove: () => void;
  readonly putBack: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly copyLink: () => void;
  readonly saveFile: () => void;
  readonly openFile: (file: File) => void;
  readonly example: (place: number) => void;
  readonly print: (what: 'sheet' | 'card') => void;
}

const nothing = () => {};

/** The desk as the page is built with it, so that the sheet under it stands still when the page comes alive. */
export const deskAtRest = (examples: readonly string[]): DeskView => ({
  id: '',
  kept: [],
  isBlank: true,
  notKept: false,
  notice: '',
  spoken: '',
  canPutBack: false,
  canUndo: false,
  canRedo: false,
  link: '',
  examples,
  open: nothing,
  add: nothing,
  remove: nothing,
  putBack: nothing,
  undo: nothing,
  redo: nothing,
  copyLink: nothing,
  saveFile: nothing,
  openFile: nothing,
  example: nothing,
  print: nothing,
});

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
      <span class="label">Sheet on the table</span>
      <select
        class="box"
        value={view.id}
        onChange={(event) => view.open(event.currentTarget.value)}
      >
        {!isKept && <option value={view.id}>A new, empty sheet</option>}
        {named(view.kept).map(({ id, label }) => (
          <option value={id} key={id}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
}

function Examples({ view }: { readonly view: DeskView }): JSX.Element {
  return (
    <div class="desk-offer">
      <p>Nothing is filled in yet. To see how it works, take an invented mill:</p>
      {view.examples.map((name, place) => (
        <button class="button" type="button" key={name} onClick={() => view.example(place)}>
          {name}
        </button>
      ))}
    </div>
  );
}

function Tools({ view }: { readonly view: DeskView }): JSX.Element {
  const take = (input: HTMLInputElement) => {
    const file = input.files?.[0];
    if (file) view.openFile(file);
    input.value = '';
  };
  return (
    <div class="desk-tools">
      <button class="button plain" type="button" disabled={!view.canUndo} onClick={view.undo}>
        Undo
      </button>
      <button class="button plain" type="button" disabled={!view.canRedo} onClick={view.redo}>
        Redo
      </button>
      <button class="button plain" type="button" onClick={view.add}>
        New sheet
      </button>
      <button class="button plain" type="button" onClick={view.copyLink}>
        Copy a link
      </button>
      <button class="button plain" type="button" onClick={view.saveFile}>
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
      <button class="button plain" type="button" onClick={() => view.print('sheet')}>
        Print the sheet
      </button>
      <button class="button plain" type="button" onClick={view.remove}>
        Throw away
      </button>
    </div>
  );
}

/** Picker, tools, offer of an example, and what there is to tell. */
export function Desk({ view }: { readonly view: DeskView }): JSX.Element {
  return (
    <>
      <div class="desk-row">
        <Picker view={view} />
        <Tools view={view} />
      </div>
      {view.isBlank && <Examples view={view} />}
      <div role="status" class="desk-notice">
        {view.notice && <p>{view.notice}</p>}
        {view.notKept && (
          <p class="refusal">
            This browser does not keep the sheet: its storage is full or forbidden. It stays on the
            table as long as the page is open. Save a file or copy a link to keep it.
          </p>
        )}
      </div>
      <p role="status" class="visually-hidden">
        {view.spoken}
      </p>
      {view.canPutBack && (
        <button class="button" type="button" onClick={view.putBack}>
          Put it back
        </button>
      )}
      {view.link && (
        <label class="desk-link">
          <span class="label">The link</span>
          <input class="box" type="text" readOnly value={view.link} />
        </label>
      )}
    </>
  );
}
