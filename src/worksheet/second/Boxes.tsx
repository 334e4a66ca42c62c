/** The boxes of the second opinions: a note, a push, a loosening torque or a pressure on the way down. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { part } from '../kit/part.tsx';

/** All of them, the caution before the hand moves. */
export const SecondBoxes = part((_, sheet): JSX.Element => {
  const isScrew = sheet.shown().load.name === 'torque';
  return (
    <>
      <p class="how">
        <strong>Locked out, with gloves on.</strong> Pluck and press the body of the band, never the
        teeth, and take bar and dial off first.
      </p>
      <p class="hint">
        {isScrew
          ? 'The torque on the handle while you did it. Leave it empty if it is the one you use now.'
          : 'The pressure while you did it. Leave it empty if it is the one you use now.'}
      </p>
      <Box path={isScrew ? 'second.torque' : 'second.pressure'} />
      <Choice path="second.ends" />
      <p class="hint">
        From where the band leaves one wheel to where it meets the other, or from guide to guide.
      </p>
      <Box path="second.span" />
      <h3 class="boxes-name">Its note, when plucked</h3>
      <p class="hint">
        Pluck the body near a quarter of the span. The octave of the lowest note is harmonic 2.
      </p>
      <Box path="second.note" />
      <Box path="second.harmonic" />
      <h3 class="boxes-name">How far it yields</h3>
      <p class="hint">Press or pull sideways, by at most a two-hundredth of the span.</p>
      <Box path="second.force" />
      <Box path="second.deflection" />
      {isScrew ? (
        <>
          <h3 class="boxes-name">What it takes to loosen</h3>
          <p class="hint">Both read while turning, at the same reading of the dial.</p>
          <Box path="second.tightening" />
          <Box path="second.loosening" />
        </>
      ) : (
        <>
          <h3 class="boxes-name">Pumping up and letting down</h3>
          <p class="hint">Both read while the dial moves, at the same reading of it.</p>
          <Box path="second.pumping" />
          <Box path="second.lettingDown" />
        </>
      )}
    </>
  );
});
