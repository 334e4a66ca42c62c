/** What a reader can share of a figure: a link, a code for a camera, its picture, and code for a page of their own. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { NOT_ARRIVED } from '../fetched-later.ts';
import { type Code, codeOf } from './code.ts';
import type { SharedFigure } from './shared-figure.ts';

/** What stands under the buttons: a sentence, a text to take from there, a code. */
interface Shown {
  readonly says: string;
  readonly text?: string;
  readonly code?: Code;
}

async function copied(text: string, says: string): Promise<Shown> {
  try {
    await navigator.clipboard.writeText(text); // some pages have no clipboard at all
    return { says };
  } catch {
    return { says: 'Mark it and copy it from here:', text };
  }
}

async function asCode(address: string): Promise<Shown> {
  const code = await codeOf(address);
  if (code === 'failed' || code === undefined) return { says: NOT_ARRIVED };
  if (code === 'tooLong')
    return { says: 'The link is too long for a code. Copy the link instead.' };
  return { says: 'A phone’s camera opens this page with these numbers.', code };
}

/** The phone's own way to send something; a reader who thinks better of it is told nothing. */
async function sent({ title, finding, address }: SharedFigure): Promise<Shown> {
  await navigator.share({ title, text: finding(), url: address() }).catch(() => {});
  return { says: '' };
}

async function saved(save: NonNullable<SharedFigure['save']>, kind: 'svg' | 'png'): Promise<Shown> {
  try {
    await save(kind);
    return { says: 'The picture is among your downloads.' };
  } catch {
    return { says: 'This browser could not draw the picture. Try the other kind.' };
  }
}

function Answer({ says, text, code }: Shown): JSX.Element {
  return (
    <>
      <p role="status">{says}</p>
      {text !== undefined && (
        <textarea class="box" aria-label="To copy" readonly rows={4} value={text} />
      )}
      {code && (
        <svg
          class="matrix-code"
          viewBox={`0 0 ${code.size} ${code.size}`}
          role="img"
          aria-label="The link as a code for a camera"
        >
          <rect width={code.size} height={code.size} />
          <path d={code.path} />
        </svg>
      )}
    </>
  );
}

/** The buttons, each named for what it gives, and what came of the last one. */
export function Panel({ of }: { readonly of: SharedFigure }): JSX.Element {
  const [shown, show] = useState<Shown>({ says: '' });
  const { save } = of;
  const button = (label: string, act: () => Promise<Shown>) => (
    <button class="button" type="button" onClick={() => void act().then(show)}>
      {label}
    </button>
  );
  return (
    <div class="share-panel">
      {button('Copy link', () =>
        copied(of.address(), 'The link is copied. It opens this page with these numbers.'),
      )}
      {'share' in navigator && button('Send', () => sent(of))}
      {button('Code for a camera', () => asCode(of.address()))}
      {save && button('Picture, PNG', () => saved(save, 'png'))}
      {save && button('Picture, SVG', () => saved(save, 'svg'))}
      {button('Code for a web page', () =>
        copied(of.embedCode(), 'The code is copied. Paste it into a page of your own.'),
      )}
      <Answer {...shown} />
    </div>
  );
}
