/** The sheet's link as a code for a phone's camera, or why there is none. */
import type { ReadonlySignal } from '@preact/signals-core';
import type { CodeState } from '../../live/sharing/code.ts';
import { part } from '../kit/part.tsx';

const WORDS = {
  tooLong: 'The link is too long for a code: use the file.',
  failed: 'The code did not arrive: use the file.',
} as const;

/** The code in black on white, whatever the theme: a camera needs it so. */
export const LinkCode = part<{ readonly code: ReadonlySignal<CodeState> }>(({ code }) => {
  const state = code.value;
  if (state === undefined) return <div class="card-code" />;
  if (typeof state === 'string') return <p class="card-code">{WORDS[state]}</p>;
  const { size, path } = state;
  return (
    <div class="card-code">
      <svg viewBox={`0 0 ${size} ${size}`} role="img" aria-label="Code of the link to this sheet">
        <rect width={size} height={size} />
        <path d={path} />
      </svg>
      <p>Scan for this sheet</p>
    </div>
  );
});
