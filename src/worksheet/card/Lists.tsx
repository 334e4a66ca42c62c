/** Many bands, ways of setting and warnings, as many as fit; the rest is told by its number. */
import type { JSX } from 'preact';
import { part } from '../kit/part.tsx';
import type { CardLine } from './contents.ts';
import type { CardLayout } from './layout.ts';
import type { CardBand } from './settings.ts';

function More({ count, what }: { readonly count: number; readonly what: string }) {
  if (count === 0) return null;
  return (
    <p class="card-more">
      And {count} more {what} on the sheet.
    </p>
  );
}

/** Other bands, where they are too many for large numerals: the torque still is the largest of each row. */
const Bands = part<{ readonly bands: readonly CardBand[] }>(({ bands }, sheet): JSX.Element => {
  return (
    <table class="card-bands">
      <thead>
        <tr>
          <th scope="col">Other band</th>
          <th scope="col">{sheet.shown().load.title}</th>
          <th scope="col">How sure</th>
          <th scope="col">Dial moves</th>
        </tr>
      </thead>
      <tbody>
        {bands.map(({ name, size, setting }, place) => (
          <tr key={place}>
            <th scope="row">
              {name}
              <small>{size}</small>
            </th>
            <td class={setting?.first ? 'is-provisional' : undefined}>
              {setting?.torque ?? 'STOP'}
            </td>
            <td>
              {setting?.needs ?? 'no setting'}
              <small>{setting?.trust}</small>
            </td>
            <td>
              {setting?.dial}
              <small>{setting?.inOtherUnit}</small>
            </td>
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
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

type Props = Pick<CardLayout, 'bands' | 'ways' | 'warnings' | 'areFewWays' | 'more'>;

/** The three lists in their order; nothing where all are empty. */
export function CardLists({ bands, ways, warnings, areFewWays, more }: Props): JSX.Element | null {
  if ([bands, ways, warnings].every(({ length }) => length === 0)) return null;
  return (
    <div class="card-lists">
      {bands.length > 0 && <Bands bands={bands} />}
      <More count={more.bands} what="bands" />
      {warnings.map((warning) => (
        <p class="card-warning" key={warning}>
          {warning}
        </p>
      ))}
      <More count={more.warnings} what="warnings" />
      {ways.length > 0 && <Ways ways={ways} areFew={areFewWays} />}
      <More count={more.ways} what="ways" />
    </div>
  );
}
