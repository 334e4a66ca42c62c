/** The setting card: one sheet of paper to hang at the mill. The mill, the torque of each band, cautions, facts, a log. */
import type { ReadonlySignal } from '@preact/signals-core';
import type { CodeState } from '../../live/sharing/code.ts';
import { part } from '../kit/part.tsx';
import { CardFacts } from './Facts.tsx';
import { CardCautions, CardLog } from './Foot.tsx';
import { LinkCode } from './LinkCode.tsx';
import { CardLists } from './Lists.tsx';
import { cardLayout } from './layout.ts';
import { CardTorques } from './Torques.tsx';

interface Props {
  readonly code: ReadonlySignal<CodeState>;
}

/** The card; it says so while there is no setting to print. */
export const Card = part<Props>(({ code }, sheet) => {
  const [results, worksheet] = [sheet.results(), sheet.worksheet()];
  if (!results || !worksheet) return null;
  const name = sheet.text('label');
  const layout = cardLayout(results, sheet.shown(), worksheet, name);
  const { blocks, bands, more } = layout;
  const isOneOfSeveral = blocks.length + bands.length + more.bands > 1;
  return (
    <section class={`card is-${layout.size}`} aria-labelledby="card-title">
      <header>
        <p class="card-kind">Setting card</p>
        <h2 id="card-title">{name || 'Mill without a name'}</h2>
      </header>
      <CardTorques blocks={blocks} results={results} />
      <CardLists {...layout} />
      <CardCautions />
      <div class="card-facts-and-code">
        <CardFacts results={results} blocks={blocks} isOneOfSeveral={isOneOfSeveral} />
        <LinkCode code={code} />
      </div>
      <CardLog rows={layout.logRows} />
    </section>
  );
});
