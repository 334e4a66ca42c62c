/** The torques of up to three bands, each in numerals that are read from two steps away, unless it may not be set yet. */
import type { JSX } from 'preact';
import type { WorksheetResults } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { testsLittle } from '../state/carried.ts';
import { emptyWords, slackSeen, verdictWords } from './contents.ts';
import type { LimitRow } from './limits.ts';
import { type CardBand, type CardSetting, numberAndUnit } from './settings.ts';

const SHORT = 4; // signs: a longer number has smaller numerals

function Numeral({ torque }: Pick<CardSetting, 'torque'>): JSX.Element {
  const [number, unit] = numberAndUnit(torque);
  return (
    <strong class={number.length > SHORT ? 'is-long' : undefined}>
      {number}
      <span class="card-unit">{unit}</span>
    </strong>
  );
}

function Limit({ limit: [label, load] }: { readonly limit: LimitRow }): JSX.Element {
  return (
    <div class="card-limit">
      <dt>{label}</dt>
      <dd>{load}</dd>
    </div>
  );
}

interface SettingProps {
  readonly setting: CardSetting;
  readonly limit: LimitRow | undefined;
  readonly verdict: string | undefined; // of the measured band
  readonly slack: string | undefined; // that its dial showed
}

/** What stands before the torque. */
function before({ trust, isRead }: CardSetting, name: string): string {
  if (trust === 'provisional') return `Then set the ${name} to`;
  if (trust !== 'not yet') return `Set the ${name} to`;
  return isRead ? 'By the readings alone it would be' : 'By calculation it would be';
}

/** A torque in large numerals; one that is not to be relied on yet is no larger than the words that say so. */
const Setting = part<SettingProps>(({ setting, limit, verdict, slack }, sheet): JSX.Element => {
  const { trust, torque, inOtherUnit, dial, over, needs, first } = setting;
  const { name } = sheet.shown().load;
  const isNotYet = trust === 'not yet';
  return (
    <>
      {first && <p class="card-first">{first}</p>}
      <p class="card-torque">
        <span>{before(setting, name)}</span> <Numeral torque={torque} />
        {inOtherUnit && <span class="card-same"> or {inOtherUnit}</span>}
      </p>
      <dl>
        {dial && (
          <div>
            <dt>{slack ? `Dial, after ${slack} of slack` : `Dial from zero, over ${over}`}</dt>
            <dd>{dial}</dd>
          </div>
        )}
        <div>
          <dt>{verdict === undefined ? 'Worked out to be in' : '95 % sure it is in'}</dt>
          <dd>{needs}</dd>
          {verdict && !isNotYet && <dd class="card-verdict">{verdict}</dd>}
        </div>
        {limit && <Limit limit={limit} />}
      </dl>
    </>
  );
});

interface Props {
  readonly blocks: readonly CardBand[];
  readonly isOneOfSeveral: boolean; // the measured band
  readonly results: WorksheetResults;
}

/** What stands where there is no torque. */
const noSetting = (isOwn: boolean, words: string): JSX.Element => (
  <p class="card-empty">{isOwn ? words : 'STOP. No setting is given.'}</p>
);

/** One block to a band: which it is, its torque, what the dial then shows, how sure that is, what the makers allow it. */
export const CardTorques = part<Props>(
  ({ blocks, isOneOfSeveral, results }, sheet): JSX.Element => {
    const verdict = verdictWords(results, testsLittle(sheet));
    const own = sheet.text('bandName') || (isOneOfSeveral ? 'The measured band' : 'Band');
    return (
      <div class="card-torques">
        {blocks.map(({ name, size, setting, limit }, place) => (
          <section key={place} class={setting && !setting.first ? 'card-own' : 'is-provisional'}>
            <h3>
              <span>{name || own}</span> <span>{size}</span>
            </h3>
            {setting ? (
              <Setting
                setting={setting}
                limit={limit}
                verdict={place === 0 ? verdict : undefined}
                slack={place === 0 ? slackSeen(results, sheet.shown()) : undefined}
              />
            ) : (
              <>
                {noSetting(place === 0, emptyWords(results, sheet.shown().load))}
                {limit && (
                  <dl>
                    <Limit limit={limit} />
                  </dl>
                )}
              </>
            )}
          </section>
        ))}
      </div>
    );
  },
);
