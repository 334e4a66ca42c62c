/** The boxes of what tightens: of a screw or of a cylinder. */
import { part } from '../kit/part.tsx';
import { AskedIf } from '../kit/Section.tsx';
import { CylinderBoxes } from './CylinderBoxes.tsx';
import { ScrewBoxes } from './ScrewBoxes.tsx';

/** Those that are wanted. */
export const TensionerBoxes = part((_, sheet) => {
  const isScrew = sheet.chosen('tensioner.kind') === 'screw';
  return (
    <>
      {isScrew && <ScrewBoxes />}
      <AskedIf isAsked={!isScrew}>
        <CylinderBoxes isAlone={!isScrew} />
      </AskedIf>
    </>
  );
});
