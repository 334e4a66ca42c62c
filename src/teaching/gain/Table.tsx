/** The table of scores: two boxes for each learner, what is wrong beside the box, and what the class gained. */
import type { JSX } from 'preact';
import { gainWords } from './result.ts';
import { type Column, pasted, type ReadRow, type Row, readRow, typed } from './scores.ts';

const LABELS: Readonly<Record<Column, string>> = { before: 'before', after: 'after' };

/** What the table is drawn from. */
export interface TableView {
  readonly rows: readonly Row[];
  readonly questions: number;
  readonly set: (rows: readonly Row[]) => void;
}

interface BoxProps {
  readonly view: TableView;
  readonly place: number;
  readonly column: Column;
  readonly trouble: string | undefined;
}

function ScoreBox({ view, place, column, trouble }: BoxProps): JSX.Element {
  const { rows, set } = view;
  const id = `score-${place}-${column}`;
  const paste = (event: ClipboardEvent) => {
    const table = pasted(rows, place, column, event.clipboardData?.getData('text') ?? '');
    if (!table) return;
    event.preventDefault();
    set(table);
  };
  return (
    <td>
      <input
        id={id}
        class="box"
        type="text"
        inputMode="numeric"
        autocomplete="off"
        maxLength={24}
        aria-label={`Learner ${place + 1}, ${LABELS[column]}`}
        aria-invalid={trouble ? 'true' : undefined}
        aria-describedby={trouble ? `${id}-trouble` : undefined}
        value={rows[place]?.[column] ?? ''}
        onInput={({ currentTarget }) => set(typed(rows, place, column, currentTarget.value))}
        onPaste={paste}
      />
      {trouble && (
        <p class="refusal" id={`${id}-trouble`}>
          {trouble}
        </p>
      )}
    </td>
  );
}

function Rows({ view, read }: { view: TableView; read: readonly ReadRow[] }): JSX.Element {
  return (
    <tbody>
      {view.rows.map((_, place) => (
        <tr key={`learner-${place + 1}`}>
          <th scope="row">{place + 1}</th>
          {(['before', 'after'] as const).map((column) => (
            <ScoreBox
              key={column}
              view={view}
              place={place}
              column={column}
              trouble={read[place]?.troubles[column]}
            />
          ))}
        </tr>
      ))}
    </tbody>
  );
}

/** Table and result. */
export function Table(view: TableView): JSX.Element {
  const read = view.rows.map((row) => readRow(row, view.questions));
  const learners = read.flatMap(({ scores }) => (scores ? [scores] : []));
  const halves = read.filter(({ isHalf }) => isHalf).length;
  const { finding, details } = gainWords(learners, halves);
  return (
    <div class="gain">
      <div class="gain-result" role="status">
        <p class="gain-finding">{finding}</p>
        {details.map((line) => (
          <p key={line} class="small">
            {line}
          </p>
        ))}
      </div>
      <table class="scores">
        <thead>
          <tr>
            <th scope="col">Learner</th>
            <th scope="col">Right before</th>
            <th scope="col">Right after</th>
          </tr>
        </thead>
        <Rows view={view} read={read} />
      </table>
    </div>
  );
}
