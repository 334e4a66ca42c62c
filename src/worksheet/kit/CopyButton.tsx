/** A button that copies a text, and says whether it could. */
import type { JSX } from 'preact';

interface Props {
  readonly label: string;
  readonly text: string;
}

async function copy(text: string, answer: Element | null): Promise<void> {
  const say = (sentence: string) => answer && Object.assign(answer, { textContent: sentence });
  try {
    await navigator.clipboard.writeText(text);
    say('Copied.');
  } catch {
    say('This browser does not let the page copy. Mark the text and copy it.');
  }
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
