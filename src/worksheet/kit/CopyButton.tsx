/** A button that copies a text, and says whether it could. */
import type { JSX } from 'preact';
import { copied } from '../../live/clipboard.ts';

interface Props {
  readonly label: string;
  readonly text: string;
}

async function copy(text: string, answer: Element | null): Promise<void> {
  const says = (await copied(text))
    ? 'Copied.'
    : 'This browser does not let the page copy. Mark the text and copy it.';
  if (answer) answer.textContent = says;
}

/** The button, and the answer behind it. */
export function CopyButton({ label, text }: Props): JSX.Element {
  return (
    <>
      <button
        class="button plain"
        type="button"
        onClick={(event) => void copy(text, event.currentTarget.nextElementSibling)}
      >
        {label}
      </button>
      <span role="status" />
    </>
  );
}
