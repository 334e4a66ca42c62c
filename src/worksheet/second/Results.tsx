/** What the second opinions come to: each on one scale with what the dial and the screw say at its torque. */
import type { JSX } from 'preact';
import type { OpinionResult, Outcome } from '../../core/worksheet.ts';
import type { BoxPath } from '../../form/paths.ts';
import { part } from '../kit/part.tsx';
import { Result, Steel } from '../kit/Result.tsx';
import { routeWords, StressBars } from '../results/StressBars.tsx';
import { budgetName } from '../words/budget-words.ts';
import { type OpinionName, opinionWords, verdictOf } from '../words/opinion-words.ts';

interface Props {
  readonly name: OpinionName;
}

/** The opinion and what stands beside it, drawn. */
const Besides = part<Props & { readonly of: OpinionResult }>(({ name, of }, sheet) => {
  const shown = sheet.shown();
  const bars = [
    [opinionWords(name, shown).says, of] as const,
    [routeWords('measured', shown), of.measured] as const,
    [routeWords('predicted', shown), of.predicted] as const,
  ].flatMap(([says, span], at) => (span ? [{ says, span, isFaint: at > 0 }] : []));
  return bars.length < 2 ? null : <StressBars bars={bars} />;
});

const Opinion = part<Props>(({ name }, sheet) => {
  const outcome: Outcome<OpinionResult> | undefined = sheet.result('opinions')?.[name];
  const { title, formula, boxes, blind } = opinionWords(name, sheet.shown());
  const isAsked = boxes.some((box: BoxPath) => sheet.text(box) !== '');
  if (!isAsked && sheet.isLive()) return null;
  const at = outcome?.ready ? outcome.torque : undefined;
  const wrenchClass = sheet.worksheet()?.tensioner.wrenchClass;
  return (
    <>
      <Result
        id={`opinion-${name}`}
        name={title}
        formula={formula}
        outcome={outcome}
        write={(opinion, shown) => ({
          value: shown.plusMinus(opinion.stress, opinion.expandedUncertainty, 'stress'),
          beside: at === undefined ? undefined : `at ${shown.quantity(at, shown.load.name)}`,
          arithmetic: <Steel>{shown.plain(opinion.stress, 'stress')}</Steel>,
          notes: [
            `Most of its uncertainty comes from: ${opinion.contributions
              .slice(0, 2)
              .map((line) => budgetName(line.name, shown, wrenchClass).toLowerCase())
              .join(', then ')}.`,
            blind,
          ],
        })}
      />
      {outcome?.ready && (
        <>
          <p class="result-note">{verdictOf(outcome, sheet.shown())}</p>
          <Besides name={name} of={outcome} />
        </>
      )}
    </>
  );
});

/** Each that something is filled in for. */
export function SecondResults(): JSX.Element {
  return (
    <>
      <Opinion name="note" />
      <Opinion name="press" />
      <Opinion name="loosening" />
    </>
  );
}
