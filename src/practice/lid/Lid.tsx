/** The lid, lifted: the truth, the learner's answer beside it, the account between the two, and what was hidden. */
import { benchEfficiency, benchStress, type Lifted } from '../../core/bench.ts';
import { answerOf, rowNumbers } from '../state/answering.ts';
import type { View } from '../state/view.ts';
import { stressText } from '../words/account-words.ts';
import {
  noteInWords,
  rowsInWords,
  slipInWords,
  unmadeInWords,
  verdict,
} from '../words/lid-words.ts';
import { say } from '../words/say.ts';
import { Account } from './Account.tsx';
import { liftedFor } from './lifted.ts';
import { unreadInWords } from './wrong-words.ts';

/** What nobody could see. */
function Hidden({ view }: { readonly view: View }) {
  const { mill, bench } = view;
  const { hidden, told, known } = mill;
  const { system } = bench;
  const facts: readonly (readonly [string, string])[] = [
    [
      `Stress at the usual ${say(told.usualTorque, 'torque', system)} on the handle`,
      stressText(benchStress(mill, told.usualTorque), system),
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

/** Where the slips in working out would have led with these rows. */
function Slips({ lifted, view }: { readonly lifted: Lifted; readonly view: View }) {
  return (
    <details class="no-print">
      <summary>Where slips in working it out would have led</summary>
      <ul>
        {lifted.slips.map(({ slip, stress }) => (
          <li key={slip}>{slipInWords(slip, stress, view.bench.system)}</li>
        ))}
      </ul>
    </details>
  );
}

/** What was measured and answered, against the truth. */
function Found({ lifted, view }: { readonly lifted: Lifted; readonly view: View }) {
  const { system } = view.bench;
  const answer = answerOf(view);
  const unmade = unmadeInWords(lifted.stages);
  return (
    <>
      {answer !== undefined && <p class="lid-verdict">{verdict(lifted, answer, system)}</p>}
      <p>{rowsInWords(lifted, rowNumbers(view), system)}</p>
      {unreadInWords(view).map((words) => (
        <p key={words}>{words}</p>
      ))}
      <Account lifted={lifted} view={view} answer={answer} />
      {unmade !== '' && <p class="hint">{unmade}</p>}
      {lifted.plucked && <p>{noteInWords(lifted.plucked, system)}</p>}
      <Slips lifted={lifted} view={view} />
    </>
  );
}

/** All that is under it. */
export function Lid({ view }: { readonly view: View }) {
  const lifted = liftedFor(view);
  return (
    <div class="lid-open">
      {lifted && <Found lifted={lifted} view={view} />}
      <h3>What was hidden</h3>
      <Hidden view={view} />
    </div>
  );
}
