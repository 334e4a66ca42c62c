/** The sheet's link as a code for a phone's camera, or why there is none. */
import type { ReadonlySignal } from '@preact/signals-core';
import type { CodeState } from '../../live/sharing/code.ts';
import { MatrixCode } from '../../live/sharing/MatrixCode.tsx';
import { part } from '../kit/part.tsx';
import { codePaper } from './code-paper.ts';

const WORDS = {
  tooLong: 'The link is too long for a code: use the file.',
  failed: 'The code did not arrive: use the file.',
} as const;

/** The code, and what it is for. */
export const LinkCode = part<{ readonly code: ReadonlySignal<CodeState> }>(({ code }) => {
  const state = code.value;
  if (state === undefined) return <div class="card-code" />;
  if (typeof state === 'string') return <p class="card-code">{WORDS[state]}</p>;
  const paper = codePaper(state.size);
  if (paper === 'none') return <p class="card-code">{WORDS.tooLong}</p>;
  return (
    <div class={paper === 'large' ? 'card-code is-fine' : 'card-code'}>
      <MatrixCode code={state} label="Code of the link to this sheet" />
      <p>Scan for this sheet</p>
    </div>
  );
});
