/** What is filled in last, fetched when its part is opened: other bands, and what the card says beside the numbers. */
import type { JSX } from 'preact';
import { BandsList } from './BandsList.tsx';
import { CardBoxes } from './CardBoxes.tsx';

/** Both. */
export function BandsAndCard(): JSX.Element {
  return (
    <>
      <BandsList />
      <CardBoxes />
    </>
  );
}
