/** The account of the lid: from the truth to the answer, line by line. */
import type { Lifted, Line, Stage } from '../../core/bench.ts';
import type { View } from '../state/view.ts';
import { addedText, addedUp, stressText } from '../words/account-words.ts';
import { CAUSE_NAMES, seriesInWords } from '../words/lid-words.ts';
import { remedyInWords } from './remedies.ts';
import { wrongInWords } from './wrong-words.ts';

interface Props {
  readonly lifted: Lifted;
  readonly view: View;
  readonly answer: number | undefined;
}

type CauseProps = Pick<Props, 'lifted' | 'view'> & { readonly stage: Stage };

function Cause({ stage, lifted, view }: CauseProps) {
  return (
    <div>
      {CAUSE_NAMES[stage.cause]}
      {seriesInWords(stage)}
      {wrongInWords(stage, view).map((words) => (
        <span class="lid-row" key={words}>
          {words}
        </span>
      ))}
      <span class="hint">{remedyInWords(stage, lifted, view)}</span>
    </div>
  );
}

const keyOf = ({ stages }: Line) => stages.map(({ cause }) => cause).join(' ');

/** The causes of a line; where no stress comes out between several, a bracket joins them. */
function Causes({ line, ...rest }: Pick<Props, 'lifted' | 'view'> & { readonly line: Line }) {
  const { stages } = line;
  const causes = stages.map((stage) => <Cause key={stage.cause} stage={stage} {...rest} />);
  if (stages.length === 1) return causes;
  return (
    <div class="lid-together">
      <strong>These {stages.length} together:</strong>
      {causes}
    </div>
  );
}

/** Where the account begins and ends. */
const ends = (answer: number | undefined, { isByUpperLine }: Lifted) => {
  if (answer !== undefined) return ['your answer', 'Your answer'] as const;
  const rows = isByUpperLine ? 'What the line finds in your rows' : 'What your rows measure';
  return ['your rows', rows] as const;
};

/** The table. */
export function Account({ lifted, view, answer }: Props) {
  const { system } = view.bench;
  const { truth, lines, end, isByUpperLine } = lifted;
  const [to, last] = ends(answer, lifted);
  return (
    <table class="lid-costs">
      <caption>
        From the truth to {to}: each line comes on top of those above it.
        {isByUpperLine &&
          ' The worksheet finds no stress at some steps. So all of them use a straight line through your upper rows; a row far off it is left out.'}
      </caption>
      <tbody>
        <tr class="lid-end">
          <th scope="row">The truth</th>
          <td>{stressText(truth, system)}</td>
        </tr>
        {addedUp(truth, lines, system).map(({ line, steps }) => (
          <tr key={keyOf(line)}>
            <th scope="row">
              <Causes line={line} lifted={lifted} view={view} />
            </th>
            <td>{addedText(steps, system)}</td>
          </tr>
        ))}
        {end !== undefined && (
          <tr class="lid-end">
            <th scope="row">{last}</th>
            <td>{stressText(end, system)}</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}
