/** The boxes of the wheels; a single strip has its length instead. */
import { Box } from '../kit/Box.tsx';
import { Choice } from '../kit/Choice.tsx';
import { part } from '../kit/part.tsx';
import { AskedIf } from '../kit/Section.tsx';

/** What is pulled, and its sizes. */
export const MillBoxes = part((_, sheet) => {
  const isOne = sheet.chosen('mill.strands') === 'one';
  return (
    <>
      <Choice path="mill.strands" />
      <AskedIf isAsked={isOne}>
        <Box path="mill.stripLength" />
      </AskedIf>
      {!isOne && (
        <>
          <Box path="mill.wheelDiameter1" />
          <Box path="mill.wheelDiameter2" />
          <Box path="mill.centreDistance" />
        </>
      )}
    </>
  );
});
