/** The account of the lid: from the truth to the answer, line by line. */
import type { Lifted, Line, Stage } from '../../core/bench.ts';
import type { View } from '../state/view.ts';
import { addedText, addedUp, stressText } from '../words/account-words.ts';
import { CAUSE_WORDS, seriesInWords } from '../words/lid-words.ts';
import { wrongInWords } from './wrong-words.ts';

interface Props {
  readonly lifted: Lifted;
  readonly view: View;
  readonly answer: number | undefined;
}

function Cause({ stage, view }: { readonly stage: Stage; readonly view: View }) {
  const [name, remedy] = CAUSE_WORDS[stage.cause];
  return (
    <div>
      {name}
      {seriesInWords(stage)}
      {wrongInWords(stage, view).map((words) => (
        <span class="lid-row" key={words}>
          {words}
        </span>
      ))}
      <span class="hint">{remedy}</span>
    </div>
  );
}

const keyOf = ({ stages }: Line) => stages.map(({ cause }) => cause).join(' ');

/** Where the account ends: at the answer, or at what the rows give. */
const END = { answer: 'Your answer', rows: 'What your rows measure' } as const;

/** The table. */
export function Account({ lifted, view, answer }: Props) {
  const { system } = view.bench;
  const { truth, lines } = lifted;
  const end = answer ?? lifted.measured?.stress;
  return (
    <table class="lid-costs">
      <caption>
        From the truth to {answer === undefined ? 'your rows' : 'your answer'}: each line comes on
        top of those above it
      </caption>
      <tbody>
        <tr class="lid-end">
          <th scope="row">The truth</th>
          <td>{stressText(truth, system)}</td>
        </tr>
        {addedUp(truth, lines, system).map(({ line, steps }) => (
          <tr key={keyOf(line)}>
            <th scope="row">
              {line.stages.map((stage) => (
                <Cause key={stage.cause} stage={stage} view={view} />
              ))}
            </th>
            <td>{addedText(steps, system)}</td>
          </tr>
        ))}
        {end !== undefined && (
          <tr class="lid-end">
            <th scope="row">{END[answer === undefined ? 'rows' : 'answer']}</th>
            <td>{stressText(end, system)}</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}
