/** The bench as a figure: what there is to see, rig and dial, the same in words, and what is not to scale. */
import { Sheet } from '../../figures/Sheet.tsx';
import type { View } from '../state/view.ts';
import { description, finding, handsInWords } from '../words/dial-words.ts';
import { BigDial } from './BigDial.tsx';
import { benchLayout } from './layout.ts';
import { Rig } from './Rig.tsx';

interface VariantProps {
  readonly view: View;
  readonly narrow: boolean;
  readonly idPrefix: string;
}

function Variant({ view, narrow, idPrefix }: VariantProps) {
  const layout = benchLayout(narrow);
  return (
    <div class={narrow ? 'variant-narrow' : 'variant-wide'}>
      <Sheet idPrefix={idPrefix} size={layout}>
        <Rig view={view} layout={layout} system={view.bench.system} />
        <BigDial view={view} layout={layout} />
      </Sheet>
    </div>
  );
}

interface PictureProps {
  readonly view: View;
  /** What was told last; without it, what there is to do. */
  readonly said: string;
  /** Put before every id: the page has a still drawing for who has no script. */
  readonly idPrefix: string;
}

/** The drawing that stays in view while the controls are used, and over it what was told last. */
export function Picture({ view, said, idPrefix }: PictureProps) {
  return (
    <div class="figure play-drawing">
      <p class="finding" id={`${idPrefix}-finding`} role="status">
        {said || finding(view)}
      </p>
      <Variant view={view} narrow={false} idPrefix={idPrefix} />
      <Variant view={view} narrow={true} idPrefix={idPrefix} />
      <p class="visually-hidden" id={`${idPrefix}-description`}>
        {description(view)}
      </p>
    </div>
  );
}

/** Where the hands are in words, when asked for; and the title block. */
export function PictureNotes({ view }: { readonly view: View }) {
  const hands = handsInWords(view);
  return (
    <div class="figure bench-notes">
      {hands !== '' && (
        <details class="hands-words">
          <summary>The hands in words</summary>
          <p id="bench-hands">{hands}</p>
        </details>
      )}
      <p class="title-block">
        <span>bow of the slack band larger than it is</span>
        <span>hollow hand: the look before</span>
      </p>
    </div>
  );
}
