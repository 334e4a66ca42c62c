/** A list of the sheet saved as a table for other programs, and a table opened into it. */
import type { ListPath } from '../../form/paths.ts';
import { csvOf } from '../io/csv.ts';
import { download } from '../io/file.ts';
import { takeText } from '../state/table-taking.ts';
import { part } from './part.tsx';

interface Props {
  readonly list: ListPath;
  readonly name: string; // of the file
}

/** The two buttons. */
export const TableFile = part<Props>(({ list, name }, sheet) => {
  const save = () =>
    download(
      document,
      `${name}.csv`,
      csvOf(list, sheet.cells(list), sheet.shown().system),
      'text/csv',
    );
  const open = async (input: HTMLInputElement) => {
    const text = await input.files?.[0]?.text();
    input.value = '';
    if (text !== undefined) takeText(list, text, sheet);
  };
  return (
    <p class="desk-tools no-print needs-script">
      <button class="button plain" type="button" onClick={save}>
        Save as a table (CSV)
      </button>
      <label class="button plain file-button">
        Open a table
        <input
          type="file"
          accept=".csv,.tsv,.txt,text/*"
          onChange={(event) => open(event.currentTarget)}
        />
      </label>
    </p>
  );
});
