/** Four numbers: the thread, the torque that is used now, and the body of the band; with them the sheet has an answer. */
import type { JSX } from 'preact';
import { Box } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { part } from '../kit/part.tsx';
import { Hand, MoreResults, Result } from '../kit/Result.tsx';
import { Asked, Said, Section, Seldom } from '../kit/Section.tsx';
import { NamedThread, OwnThread } from '../kit/Thread.tsx';

const SELDOM = [
  'band.widthOverTeeth',
  'band.youngsModulus',
  'band.youngsModulusHalfWidth',
] as const;

const Named = part((_, sheet) =>
  sheet.chosen('tensioner.thread.kind') === 'designation' ? <NamedThread /> : null,
);

const SectionArea = part((_, sheet) => {
  return (
    <Result
      id="section"
      name="Steel in the section, one strand"
      felt={false}
      formula={
        <>
          A = <Hand>w</Hand> · <Hand>t</Hand>
        </>
      }
      outcome={sheet.result('section')}
      write={({ area, operands: { bodyWidth, thickness } }, { plain, quantity }) => ({
        value: quantity(area, 'area'),
        arithmetic: (
          <>
            <Hand>{plain(bodyWidth, 'length')}</Hand> × <Hand>{plain(thickness, 'thickness')}</Hand>{' '}
            = {plain(area, 'area')}
          </>
        ),
      })}
    />
  );
});

/** Part 1. */
export function StartPart(): JSX.Element {
  return (
    <Section
      id="start"
      says={
        <>
          <Said path="tensioner.thread.designation" /> <Said path="band.bodyWidth" />
        </>
      }
      boxes={
        <>
          <p class="how">
            Before you measure the band or turn the screw: read <a href="#readings">the caution</a>,
            lock the mill out, put gloves on.
          </p>
          <Choice path="tensioner.thread.kind" />
          <Named />
          <Asked path="tensioner.thread.kind" option="own">
            <OwnThread />
          </Asked>
          <Box path="use.torque" />
          <Box path="band.bodyWidth" />
          <Box path="band.thickness" />
          <Choice path="band.thicknessFrom" />
          <Seldom name="Width over the teeth, other steel" paths={SELDOM} />
        </>
      }
      results={
        <MoreResults name="The section">
          <SectionArea />
        </MoreResults>
      }
    />
  );
}
