/** The setting card: one sheet of paper to hang at the mill, readable at arm's length; numbers before caveats. */
import type { ReadonlySignal } from '@preact/signals-core';
import type { JSX } from 'preact';
import type { WorksheetResults } from '../../core/worksheet.ts';
import type { CodeState } from '../../live/sharing/code.ts';
import { part } from '../kit/part.tsx';
import type { Shown } from '../state/shown.ts';
import { type CardSetting, emptyWords, firstWords, ownSetting } from './contents.ts';
import { CardFacts } from './Facts.tsx';
import { CardCautions, CardChecks } from './Foot.tsx';
import { LinkCode } from './LinkCode.tsx';
import { CardLists } from './Lists.tsx';

function bandLine(results: WorksheetResults, shown: Shown): string {
  if (!results.section.ready) return '';
  const { bodyWidth, thickness } = results.section.operands;
  return `${shown.quantity(bodyWidth, 'length')} body × ${shown.quantity(thickness, 'thickness')}`;
}

interface OwnProps {
  readonly setting: CardSetting;
  readonly results: WorksheetResults;
}

/** The torque in large numerals; one that is not to be relied on yet is no larger than the words that say so. */
const OwnSetting = part<OwnProps>(({ setting, results }, sheet): JSX.Element => {
  const shown = sheet.shown();
  const { load } = shown;
  const first = firstWords(setting, results, shown);
  return (
    <div class={first ? 'card-own is-provisional' : 'card-own'}>
      {first && <p class="card-first">{first}</p>}
      <dl>
        <div class="card-torque">
          <dt>
            {setting.trust === 'not yet'
              ? 'By the readings alone it would be'
              : `Set the ${load.name} to`}
          </dt>
          <dd>
            {setting.torque}
            {setting.inchPounds && <small>{setting.inchPounds}</small>}
          </dd>
        </div>
        {setting.trust !== 'not yet' && (
          <div>
            <dt>How sure that is</dt>
            <dd>{setting.needs}</dd>
          </div>
        )}
        <div>
          <dt>Stress in the band, 95 %</dt>
          <dd class="steel">{setting.gives}</dd>
        </div>
        {setting.dial && (
          <div>
            <dt>The dial moves, from zero tension</dt>
            <dd class="steel">{setting.dial}</dd>
          </div>
        )}
      </dl>
    </div>
  );
});

interface Props {
  readonly code: ReadonlySignal<CodeState>;
}

/** The card; it says so while there is no setting to print. */
export const Card = part<Props>(({ code }, sheet) => {
  const shown = sheet.shown();
  const results = sheet.results();
  if (!results) return null;
  const setting = ownSetting(results, shown);
  return (
    <section class="card" aria-labelledby="card-title">
      <p class="card-kind">
        <span>Setting card</span> <span>{bandLine(results, shown)}</span>
      </p>
      <h2 id="card-title">{sheet.text('label') || 'Mill without a name'}</h2>
      {setting ? (
        <OwnSetting setting={setting} results={results} />
      ) : (
        <p class="card-empty">{emptyWords(results, shown.load)}</p>
      )}
      <CardFacts results={results} />
      <CardLists results={results} />
      <div class="card-foot">
        <CardChecks />
        <LinkCode code={code} />
      </div>
      <CardCautions />
    </section>
  );
});
