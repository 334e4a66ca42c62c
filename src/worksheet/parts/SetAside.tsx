/** What came with the sheet and cannot stand on it: shown as it was found, to be copied out, until it has been seen. */
import { asideCount, type SetAside as Found } from '../../form/set-aside.ts';
import { CopyButton } from '../kit/CopyButton.tsx';
import { part } from '../kit/part.tsx';
import { asideNotice } from '../words/refusal-notices.ts';
import { placeName } from '../words/waiting-words.ts';

const lineOf = ({ place, text }: Found) => `${placeName(place)}: ${text}`;

/** A fold with each text and its place; nothing where all could be read. */
export const SetAside = part((_, sheet) => {
  const aside = sheet.aside();
  if (!aside) return null;
  const { kept, more } = aside;
  return (
    <section class="set-aside" aria-label="What could not be read">
      <details>
        <summary>{asideNotice(asideCount(aside))}</summary>
        <dl>
          {kept.map(({ place, text }, at) => (
            <div key={at}>
              <dt>{placeName(place)}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
        {more > 0 && <p>{more} more were too many to be shown.</p>}
      </details>
      <p class="needs-script">
        <CopyButton label="Copy them" text={kept.map(lineOf).join('\n')} />
        <button class="button plain" type="button" onClick={() => sheet.run({ do: 'seen' })}>
          I have seen it
        </button>
      </p>
    </section>
  );
});
