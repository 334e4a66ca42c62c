/**
 * The chain from load to stress in letters and in numbers: a screw has its lead and π in it, a cylinder the area of its
 * piston; two strands share the pull, a single strip bears it alone.
 */
import type { JSX } from 'preact';
import type { ChainOperands } from '../../core/worksheet.ts';
import { part } from './part.tsx';
import { Hand } from './Result.tsx';

/** The letter of the load. */
export const Letter = part((_, sheet) => <Hand>{sheet.shown().load.letter}</Hand>);

/** The letter of the load that moves the empty screw or cylinder. */
export const NoLoad = part((_, sheet) => (
  <Hand>
    {sheet.shown().load.letter}
    <sub>0</sub>
  </Hand>
));

/** What the stress is multiplied by, in letters. */
export const TimesSection = part((_, sheet) => {
  const isScrew = sheet.shown().load.name === 'torque';
  const isOne = sheet.chosen('mill.strands') === 'one';
  return (
    <>
      {isScrew && (
        <>
          <Hand>l</Hand> ·{' '}
        </>
      )}
      {!isScrew && !isOne && '2 · '}A{!isOne && ' · cos β'}
    </>
  );
});

/** What the efficiency is multiplied by, in letters. */
export const PerLoad = part((_, sheet) => {
  const isScrew = sheet.shown().load.name === 'torque';
  if (!isScrew)
    return (
      <>
        a ·{' '}
        <Hand>
          A<sub>p</sub>
        </Hand>
      </>
    );
  return <>{sheet.chosen('mill.strands') === 'one' ? '2π' : 'π'} · a</>;
});

interface Props {
  readonly of: Pick<
    ChainOperands,
    'drive' | 'area' | 'strandCount' | 'strandHalfAngle' | 'advantage'
  >;
}

/** What the stress is multiplied by, in numbers. */
export const Times = part<Props>(({ of: o }, sheet): JSX.Element => {
  const { plain, number } = sheet.shown();
  return (
    <>
      {o.drive.kind === 'screw' && (
        <>
          <Hand>{plain(o.drive.lead, 'thickness')}</Hand> ×{' '}
        </>
      )}
      {o.drive.kind === 'cylinder' && o.strandCount === 2 && '2 × '}
      {plain(o.area, 'area')}
      {o.strandHalfAngle !== 0 && ` × ${number(Math.cos(o.strandHalfAngle))}`}
    </>
  );
});

/** What the efficiency is multiplied by, in numbers. */
export const DividedBy = part<Props>(({ of: o }, sheet): JSX.Element => {
  const { plain, number } = sheet.shown();
  const lever = o.advantage === 1 ? '' : number(o.advantage);
  if (o.drive.kind === 'cylinder')
    return (
      <>
        {lever && `${lever} × `}
        <Hand>{plain(o.drive.pistonArea, 'area')}</Hand>
      </>
    );
  return (
    <>
      {o.strandCount === 1 ? '2π' : 'π'}
      {lever && ` × ${lever}`}
    </>
  );
});
