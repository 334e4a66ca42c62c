/** What a reader can share of a figure or a sheet: link, code for a camera, picture, code for a page of their own. */
import { Component, type JSX } from 'preact';
import { copied } from '../clipboard.ts';
import { NOT_ARRIVED } from '../fetched-later.ts';
import { type Code, codeOf } from './code.ts';
import { MatrixCode } from './MatrixCode.tsx';
import type { PictureKind, Shareable } from './shareable.ts';

/** What stands under the buttons: a sentence, a text to take from there, a code. */
interface Shown {
  readonly says: string;
  readonly text?: string | undefined;
  readonly code?: Code | undefined;
}

const TOO_LONG = {
  link: 'This is too long for a link: programs that pass links on would cut it. Save a file instead.',
  code: 'The link is too long for a code. Copy the link instead.',
} as const;

async function taken(text: string, says: string): Promise<Shown> {
  return (await copied(text)) ? { says } : { says: 'Mark it and copy it from here:', text };
}

async function linked({ address, words }: Shareable): Promise<Shown> {
  const link = await address();
  return link === undefined ? { says: TOO_LONG.link } : taken(link, words.copied);
}

async function asCode({ address, words }: Shareable): Promise<Shown> {
  const link = await address();
  if (link === undefined) return { says: TOO_LONG.link };
  const code = await codeOf(link);
  if (code === 'failed' || code === undefined) return { says: NOT_ARRIVED };
  if (code === 'tooLong') return { says: TOO_LONG.code };
  return { says: words.coded, code };
}

/** The phone's own way to send something; a reader who thinks better of it is told nothing. */
async function sent({ title, finding, address }: Shareable): Promise<Shown> {
  const url = await address();
  if (url === undefined) return { says: TOO_LONG.link };
  await navigator.share({ title, text: finding(), url }).catch(() => {});
  return { says: '' };
}

async function saved(save: NonNullable<Shareable['save']>, kind: PictureKind): Promise<Shown> {
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
      {code && <MatrixCode code={code} label="The link as a code for a camera" />}
    </>
  );
}

interface Props {
  readonly of: Shareable;
}

/** The buttons, each named for what it gives, and what came of the last one. */
export class Panel extends Component<Props, Shown> {
  override state: Shown = { says: '' };

  private button(label: string, act: () => Promise<Shown>): JSX.Element {
    const show = ({ says, text, code }: Shown) => this.setState({ says, text, code });
    return (
      <button
        class="button"
        type="button"
        onClick={() => void act().then(show, () => show({ says: NOT_ARRIVED }))}
      >
        {label}
      </button>
    );
  }

  render(): JSX.Element {
    const { of } = this.props;
    const { save, embedCode } = of;
    return (
      <div class="share-panel">
        {this.button('Copy link', () => linked(of))}
        {'share' in navigator && this.button('Send', () => sent(of))}
        {this.button('Code for a camera', () => asCode(of))}
        {save && this.button('Picture, PNG', () => saved(save, 'png'))}
        {save && this.button('Picture, SVG', () => saved(save, 'svg'))}
        {embedCode &&
          this.button('Code for a web page', () =>
            taken(embedCode(), 'The code is copied. Paste it into a page of your own.'),
          )}
        <Answer {...this.state} />
      </div>
    );
  }
}
