/** Four numbers: thread or piston, the torque or pressure that is used now, and the body of the band; with them the sheet has an answer. */
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

/** Thread or piston in short. */
export const Tightener = part((_, sheet) =>
  sheet.chosen('tensioner.kind') === 'screw' ? (
    <Said
      path={`tensioner.thread.${sheet.chosen('tensioner.thread.kind') === 'own' ? 'outsideDiameter' : 'designation'}`}
    />
  ) : (
    <Said before="piston " path="tensioner.cylinder.pistonDiameter" />
  ),
);

const Named = part((_, sheet) =>
  sheet.chosen('tensioner.thread.kind') === 'designation' ? <NamedThread /> : null,
);

/** The boxes of the screw or of the cylinder. */
const Tightens = part((_, sheet) => (
  <>
    {sheet.chosen('tensioner.kind') === 'screw' && (
      <>
        <Choice path="tensioner.thread.kind" />
        <Named />
        <Asked path="tensioner.thread.kind" option="own">
          <OwnThread />
        </Asked>
        <Box path="use.torque" />
      </>
    )}
    <Asked path="tensioner.kind" option="cylinder">
      <Box path="tensioner.cylinder.pistonDiameter" />
      <Box path="tensioner.cylinder.rodDiameter" />
      <Box path="use.pressure" />
    </Asked>
  </>
));

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
          <Tightener />
          <Said path="band.bodyWidth" />
        </>
      }
      boxes={
        <>
          <p class="how">
            Before you measure the band or tighten it: read <a href="#readings">the caution</a>,
            lock the mill out, put gloves on.
          </p>
          <Choice path="tensioner.kind" />
          <Tightens />
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
