/** The torques of up to three bands, each in numerals that are read from two steps away, unless it may not be set yet. */
import type { JSX } from 'preact';
import type { WorksheetResults } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { emptyWords, ownBandCalled, slackSeen, warmShown } from './contents.ts';
import type { LimitRow } from './limits.ts';
import { type CardBand, type CardSetting, isForSetting, numberAndUnit } from './settings.ts';

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
  readonly isOwn: boolean; // of the measured band
  readonly results: WorksheetResults;
}

/** What stands before the torque. */
function before({ trust, isRead }: CardSetting): string {
  if (trust === 'provisional') return 'Provisional, worked out so far:';
  if (trust !== 'not yet') return 'Set to';
  return isRead ? 'By the readings alone it would be' : 'By calculation it would be';
}

/** How well the torque is known, so that nobody takes it for what is allowed; of a rough one the range, which is to be gone by. */
function known({ isRead, trust, needs, off }: CardSetting, isOwn: boolean): LimitRow {
  if (trust === 'rough') return ['Known to within (95 %)', needs];
  if (!isRead) return ['Calculated, may be off by (95 %)', off];
  return [isOwn ? 'Measured, may be off by (95 %)' : 'Worked out, may be off by', off];
}

/** What the dial then shows, how sure the torque is, what the makers allow. */
const Beside = part<SettingProps>(({ setting, limit, isOwn, results }, sheet): JSX.Element => {
  const { dial, over, trust } = setting;
  const [how, within] = known(setting, isOwn);
  const slack = isOwn ? slackSeen(results, sheet.shown()) : undefined;
  const isSet = trust === 'measured' || trust === 'rough';
  const warm = isOwn && isSet ? warmShown(results, sheet.shown()) : undefined;
  return (
    <dl>
      {dial && (
        <div>
          <dt>{slack ? `Dial moves, after ${slack} of slack` : `Dial moves, over ${over}`}</dt>
          <dd>{dial}</dd>
        </div>
      )}
      <div>
        <dt>{how}</dt>
        <dd>{within}</dd>
      </div>
      {warm && (
        <div>
          <dt>Set cold; warm it may fall to</dt>
          <dd>{warm}</dd>
        </div>
      )}
      {limit && <Limit limit={limit} />}
    </dl>
  );
});

/** A torque in large numerals; one that is not to be relied on yet is no larger than the words that say so. */
function Setting(props: SettingProps): JSX.Element {
  const { torque, inOtherUnit, first } = props.setting;
  return (
    <>
      {first && <p class="card-first">{first}</p>}
      <p class="card-torque">
        <span>{before(props.setting)}</span> <Numeral torque={torque} />
        {inOtherUnit && <span class="card-same"> or {inOtherUnit}</span>}
      </p>
      <Beside {...props} />
    </>
  );
}

interface Props {
  readonly blocks: readonly CardBand[];
  readonly isOneOfSeveral: boolean; // the measured band
  readonly results: WorksheetResults;
}

/** Numerals for a torque that may be set; words, as large as it or larger, before any other. */
function blockClass(setting: CardSetting | undefined): string {
  if (setting && !setting.first) return 'card-own';
  return setting && !isForSetting(setting) ? 'is-provisional is-not-for-setting' : 'is-provisional';
}

/** What stands where there is no torque. */
const noSetting = (isOwn: boolean, words: string): JSX.Element => (
  <p class="card-empty">{isOwn ? words : 'STOP. No setting is given.'}</p>
);

/** One block to a band: which it is, its torque, what the dial then shows, how sure that is, what the makers allow it. */
export const CardTorques = part<Props>(
  ({ blocks, isOneOfSeveral, results }, sheet): JSX.Element => {
    const own =
      sheet.text('bandName') || (isOneOfSeveral ? `The ${ownBandCalled(results)}` : 'Band');
    return (
      <div class="card-torques">
        {blocks.map(({ name, size, setting, limit }, place) => (
          <section key={place} class={blockClass(setting)}>
            <h3>
              <span>{name || own}</span> <span>{size}</span>
            </h3>
            {setting ? (
              <Setting setting={setting} limit={limit} isOwn={place === 0} results={results} />
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
