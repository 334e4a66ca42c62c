/** Other bands, ways of setting and warnings, as many as fit; the rest is told by its number. */
import type { JSX } from 'preact';
import { loadIn, type WorksheetResults } from '../../core/worksheet.ts';
import { part } from '../kit/part.tsx';
import { inchPounds } from '../words/setting-words.ts';
import { bandLines, type CardBand, type CardLine, cardWarnings, wayLines } from './contents.ts';
import { CARD_LINES, fitting, linesOf } from './room.ts';

function More({ count, what }: { readonly count: number; readonly what: string }) {
  if (count === 0) return null;
  return (
    <p class="card-more">
      And {count} more {what} on the sheet.
    </p>
  );
}

interface BandsProps {
  readonly bands: readonly CardBand[];
  readonly haveSizes: boolean;
}

const Bands = part<BandsProps>(({ bands, haveSizes }, sheet): JSX.Element => {
  return (
    <table class="card-bands">
      <thead>
        <tr>
          <th scope="col">Other band</th>
          <th scope="col">{sheet.shown().load.title}</th>
          <th scope="col">Range</th>
          <th scope="col">Dial moves</th>
          <th scope="col">How sure</th>
        </tr>
      </thead>
      <tbody>
        {bands.map(({ name, size, setting }, place) => (
          <tr key={place}>
            <th scope="row">
              {name}
              {haveSizes && <small>{size}</small>}
            </th>
            <td class="hand">
              {setting?.torque ?? 'STOP'}
              {setting?.inchPounds && <small>{setting.inchPounds}</small>}
            </td>
            <td>{setting?.needs ?? 'no setting'}</td>
            <td>{setting?.dial}</td>
            <td>{setting?.trust}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
});

interface WaysProps {
  readonly ways: readonly CardLine[];
  readonly areFew: boolean;
}

function Ways({ ways, areFew }: WaysProps): JSX.Element {
  return (
    <dl class={areFew ? 'card-ways are-few' : 'card-ways'}>
      {ways.map(({ name, at, value }, place) => (
        <div key={place}>
          <dt>
            <span>{name}</span>
            {at}
          </dt>
          <dd class="steel">{value}</dd>
        </div>
      ))}
    </dl>
  );
}

interface Props {
  readonly results: WorksheetResults;
}

const BAND_HEAD = 1; // lines
const FEW = 3; // so many ways have a line each, and their names room; so many bands their sizes
const SECOND_UNIT = 2; // lines, under the large numeral

/** The three lists in their order. */
export const CardLists = part<Props>(({ results }, sheet) => {
  const shown = sheet.shown();
  const worksheet = sheet.worksheet();
  const bands = bandLines(results, shown, worksheet?.bands ?? []);
  const isTwice = inchPounds(0, shown) !== undefined; // a torque in two units, one below the other
  const haveSizes = isTwice || bands.length <= FEW;
  const ways = wayLines(
    results,
    shown,
    worksheet?.ways.map((way) => loadIn(worksheet, way)),
  );
  const warnings = cardWarnings(results, shown);
  const areFew = ways.length <= FEW;
  const costs = [
    bands.map((_, place) => (haveSizes ? 2 : 1) + (place === 0 ? BAND_HEAD : 0)),
    warnings.map((warning) => linesOf(warning)),
    ways.map((_, place) => (areFew || place % 2 === 0 ? 1 : 0)), // else two to a line
  ];
  const [forBands = 0, forWarnings = 0, forWays = 0] = fitting(
    costs,
    CARD_LINES - (isTwice ? SECOND_UNIT : 0),
  );
  return (
    <div class="card-lists">
      {forBands > 0 && <Bands bands={bands.slice(0, forBands)} haveSizes={haveSizes} />}
      <More count={bands.length - forBands} what="bands" />
      {forWays > 0 && <Ways ways={ways.slice(0, forWays)} areFew={areFew} />}
      <More count={ways.length - forWays} what="ways" />
      {warnings.slice(0, forWarnings).map((warning) => (
        <p class="card-warning" key={warning}>
          {warning}
        </p>
      ))}
      <More count={warnings.length - forWarnings} what="warnings" />
    </div>
  );
});
