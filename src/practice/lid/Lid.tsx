/** The lid, lifted: the truth, the learner's answer beside it, what each mistake cost, and what was hidden. */

import { benchEfficiency, benchStress, type Cost } from '../../core/bench.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { answerOf } from '../state/answering.ts';
import type { View } from '../state/view.ts';
import {
  costInWords,
  MISTAKE_WORDS,
  rowsInWords,
  SLIP_WORDS,
  verdict,
} from '../words/lid-words.ts';
import { say } from '../words/say.ts';
import { liftedFor } from './lifted.ts';

interface CostsProps<Name extends string> {
  readonly caption: string;
  /** What is said of one that was not made; without it, its cost. */
  readonly unmade?: string;
  /** What is added to one that was made. */
  readonly made?: string;
  readonly costs: readonly Cost<Name>[];
  readonly words: Readonly<Record<Name, readonly [name: string, remedy: string]>>;
  readonly system: UnitSystem;
}

function Costs<Name extends string>(props: CostsProps<Name>) {
  const { caption, made, unmade, costs, words, system } = props;
  return (
    <table class="lid-costs">
      <caption>{caption}</caption>
      <tbody>
        {costs.map(({ mistake, isMade, cost, without }) => (
          <tr key={mistake} class={isMade ? 'is-made' : undefined}>
            <th scope="row">
              {words[mistake][0]}
              <span class="hint">{words[mistake][1]}</span>
            </th>
            <td>
              {isMade || unmade === undefined ? costInWords({ cost, without }, system) : unmade}
              {isMade && made && <span class="hint">{made}</span>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What nobody could see. */
function Hidden({ view }: { readonly view: View }) {
  const { mill, bench } = view;
  const { hidden, told, known } = mill;
  const { system } = bench;
  const facts: readonly (readonly [string, string])[] = [
    [
      `Stress at ${say(told.usualTorque, 'torque', system)}`,
      say(benchStress(mill, told.usualTorque), 'stress', system),
    ],
    ['No-load torque', say(hidden.dragTorque, 'torque', system)],
    ['Efficiency of the screw', say(benchEfficiency(mill), 'percent', system)],
    ['Young’s modulus', say(hidden.youngsModulus, 'modulus', system)],
    ['Coil set, on the dial', say(Math.abs(hidden.coilShift), 'stretch', system)],
    ['Coil set down to a third at', say(hidden.coilStress, 'stress', system)],
    [
      'Band’s section',
      `${say(known.bodyWidth, 'length', system)} × ${say(known.thickness, 'thickness', system)}`,
    ],
  ];
  return (
    <dl class="lid-hidden">
      {facts.map(([label, value]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** All that is under it. */
export function Lid({ view }: { readonly view: View }) {
  const { system } = view.bench;
  const [lifted, answer] = [liftedFor(view), answerOf(view)];
  return (
    <div class="lid-open">
      {lifted && (
        <>
          {answer !== undefined && <p class="lid-verdict">{verdict(lifted, answer, system)}</p>}
          <p>{rowsInWords(lifted, system)}</p>
          <Costs
            caption="What your measurement met, and what each cost at the top torque"
            unmade="did not happen"
            costs={lifted.costs}
            words={MISTAKE_WORDS}
            system={system}
          />
          <Costs
            caption="What a mistake in working it out would make of it"
            made="your answer is close to that"
            costs={lifted.slips}
            words={SLIP_WORDS}
            system={system}
          />
        </>
      )}
      <h3>What was hidden</h3>
      <Hidden view={view} />
    </div>
  );
}
