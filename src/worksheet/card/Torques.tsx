/** The torques of up to three bands, each in numerals that are read from two steps away, unless it may not be set yet. */
import type { JSX } from 'preact';
import type { WorksheetResults } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { emptyWords, slackSeen } from './contents.ts';
import type { LimitRow } from './limits.ts';
import { type CardBand, type CardSetting, isForSetting, numberAndUnit } from './settings.ts';

const SHORT = 4; // signs: a longer number has smaller numerals

type Numbered = Pick<CardSetting, 'torque' | 'inOtherUnit'>;

function Numeral({ torque, inOtherUnit }: Numbered): JSX.Element {
  const [number, unit] = numberAndUnit(torque);
  return (
    <strong>
      <span class={number.length > SHORT ? 'card-number is-long' : 'card-number'}>{number}</span>
      <span class="card-units">
        <span class="card-unit">{unit}</span>
        {inOtherUnit && <span class="card-same"> or {inOtherUnit}</span>}
      </span>
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

const OnlyLimit = ({ limit }: Pick<CardBand, 'limit'>): JSX.Element | null =>
  limit ? (
    <dl>
      <Limit limit={limit} />
    </dl>
  ) : null;

interface SettingProps {
  readonly setting: CardSetting;
  readonly limit: LimitRow | undefined;
  readonly isSlackSeen: boolean; // before the dial tells a stretch
}

/** What stands before the torque. */
function before({ trust, isRead }: CardSetting): string {
  if (trust !== 'not yet') return 'Set to';
  return isRead ? 'By the readings alone it would be' : 'By calculation it would be';
}

/** How sure a torque is, by the stress that it gives: its own range would read as what is allowed. A rough one is to be gone by its range. */
const sure = ({ trust, needs, gives }: CardSetting): LimitRow =>
  trust === 'rough' ? ['Known to within (95\u00a0%)', needs] : ['Stress then (95\u00a0%)', gives];

/** What the dial then shows, what the makers allow, and how sure that is. */
function Beside({ setting, limit, isSlackSeen }: SettingProps): JSX.Element {
  const { dial, over } = setting;
  const [how, within] = sure(setting);
  return (
    <dl>
      {dial && (
        <div>
          <dt>
            {isSlackSeen ? `Dial moves after slack, over ${over}` : `Dial moves, over ${over}`}
          </dt>
          <dd>{dial}</dd>
        </div>
      )}
      {limit && <Limit limit={limit} />}
      <div class="card-sure">
        <dt>{how}</dt> <dd>{within}</dd>
      </div>
    </dl>
  );
}

/** A torque in large numerals; one that is not to be set yet is no larger than the words that say so, and a provisional one is left to the facts: whatever number stands here is set. */
function Setting(props: SettingProps): JSX.Element {
  const { setting, limit } = props;
  return (
    <>
      {setting.first && <p class="card-first">{setting.first}</p>}
      {setting.trust === 'provisional' ? (
        <p>No torque for this band yet.</p>
      ) : (
        <p class="card-torque">
          <span>{before(setting)}</span> <Numeral {...setting} />
        </p>
      )}
      {isForSetting(setting) ? <Beside {...props} /> : <OnlyLimit limit={limit} />}
    </>
  );
}

/** A band by its name and its size; by its size alone where it has none. */
const Which = ({ name, size }: Pick<CardBand, 'name' | 'size'>): JSX.Element => (
  <h3>
    <span>{name || size || 'Band'}</span> {name && <span>{size}</span>}
  </h3>
);

interface Props {
  readonly blocks: readonly CardBand[];
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
export const CardTorques = part<Props>(({ blocks, results }, sheet): JSX.Element => {
  const isSlackSeen = slackSeen(results, sheet.shown()) !== undefined;
  const own = sheet.text('bandName');
  return (
    <div class="card-torques">
      {blocks.map(({ name, size, setting, limit }, place) => (
        <section key={place} class={blockClass(setting)}>
          <Which name={name || own} size={size} />
          {setting ? (
            <Setting setting={setting} limit={limit} isSlackSeen={isSlackSeen} />
          ) : (
            <>
              {noSetting(place === 0, emptyWords(results, sheet.shown().load))}
              <OnlyLimit limit={limit} />
            </>
          )}
        </section>
      ))}
    </div>
  );
});
