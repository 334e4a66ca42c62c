/** Which mill is on the bench: its number and level, another one, the links for a class. */
import { type BenchLevel, benchLevels } from '../../core/bench.ts';
import { type Place, seedOf } from '../state/address.ts';
import { LEVEL_WORDS } from '../words/level-words.ts';
import type { DeskProps } from './desk.ts';

interface Props {
  readonly desk: DeskProps;
  /** Puts a mill on the bench; `isFresh` forgets what was done at it. */
  readonly open: (place: Place, isFresh?: boolean) => void;
  readonly copy: (place: Place, lid?: string) => void;
  readonly tell: (says: string) => void;
  /** What was told of them last. */
  readonly beside: string;
}

const FORM = 'bench-choosing';

const SEEDS = 9999; // as many numbers as are easily said in a class

const anySeed = (): number => 1 + Math.floor(Math.random() * SEEDS);

const place = (form: HTMLFormElement): { readonly seed: string; readonly level: BenchLevel } => {
  const data = new FormData(form);
  const level = benchLevels.find((each) => each === data.get('level'));
  return { seed: String(data.get('seed')).trim(), level: level ?? 'clean' };
};

/** Does something with the mill that is typed, or tells why it is none. */
function withTyped(
  { currentTarget }: { readonly currentTarget: HTMLFormElement | HTMLButtonElement },
  { tell }: Props,
  then: (place: Place) => void,
): void {
  const form = currentTarget instanceof HTMLFormElement ? currentTarget : currentTarget.form;
  if (!form) return;
  const { seed, level } = place(form);
  const known = seedOf(seed);
  if (known === undefined)
    tell(`“${seed.slice(0, 20)}” is no number of a mill. Use a whole number, such as 1234.`);
  else then({ seed: known, level });
}

/** Level and number. */
function Form(props: Props) {
  const { desk, open } = props;
  const { bench } = desk.view;
  return (
    <form
      class={FORM}
      id={FORM}
      onSubmit={(event) => {
        event.preventDefault();
        withTyped(event, props, open);
      }}
    >
      <label>
        <span>Level</span>
        <select name="level" class="box" key={bench.level}>
          {benchLevels.map((level) => (
            <option key={level} value={level} selected={level === bench.level}>
              {LEVEL_WORDS[level][0]}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>Number of the mill</span>
        <input
          class="box"
          name="seed"
          type="text"
          inputMode="numeric"
          autocomplete="off"
          maxLength={10}
          key={bench.seed}
          defaultValue={String(bench.seed)}
        />
      </label>
      <div class="bench-buttons">
        <button class="button" type="submit">
          Open this mill
        </button>
        <button
          class="button plain"
          type="button"
          onClick={(event) => {
            const { form } = event.currentTarget;
            if (form) open({ seed: anySeed(), level: place(form).level });
          }}
        >
          Any mill
        </button>
      </div>
    </form>
  );
}

/** The form, the links, and starting again. */
export function Choosing(props: Props) {
  const { desk, open, copy, beside } = props;
  const { bench } = desk.view;
  return (
    <section class="bench-other no-print">
      <h2>Another mill</h2>
      <p>The same number and level give everyone the same mill.</p>
      <Form {...props} />
      <div class="bench-buttons">
        <button
          class="button"
          type="button"
          form={FORM}
          onClick={(event) => withTyped(event, props, copy)}
        >
          Copy the link for a class
        </button>
        <button
          class="button plain"
          type="button"
          form={FORM}
          onClick={(event) => withTyped(event, props, (to) => copy(to, '&lid=open'))}
        >
          Copy the teacher’s link, lid open
        </button>
        <button class="button plain" type="button" onClick={() => print()}>
          Print the sheet
        </button>
      </div>
      <p role="status">{beside}</p>
      {bench.taken.length + bench.tries.length > 0 && (
        <details class="bench-again">
          <summary>Start this mill again</summary>
          <p>This deletes all series and rows of mill {bench.seed} in this browser.</p>
          <button class="button" type="button" onClick={() => open(bench, true)}>
            Delete and start again
          </button>
        </details>
      )}
    </section>
  );
}
