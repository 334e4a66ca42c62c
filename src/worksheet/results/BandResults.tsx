/** What to set for each other band: by the readings on the first one, by the screw alone, on the dial, in turns. */
import type { BandSetting } from '../../core/worksheet.ts';
import { beforeByReadings, beforeByScrew } from '../compare/provisional-words.ts';
import { part } from '../kit/part.tsx';
import { Hand, Result } from '../kit/Result.tsx';
import { aboveDrag, Reach, ScrewFormula, ScrewTorque } from '../kit/SetTorque.tsx';
import { bandDialAndTurns } from '../words/advice-words.ts';
import { bandName } from '../words/setting-words.ts';

interface Props {
  readonly band: BandSetting;
  readonly place: number;
}

const ByReadings = part<Props>(({ band, place }, sheet) => (
  <Result
    id={`band-${place}`}
    name={`${bandName(band, place)}: ${sheet.shown().load.name}, by your readings`}
    felt={false}
    formula={<ScrewFormula own />}
    outcome={band.byReadings}
    write={(setting, shown) => ({
      provisional: beforeByReadings(setting, sheet, place),
      value: <Hand>{shown.quantity(setting.torque, shown.load.name)}</Hand>,
      beside: <Reach of={setting} shown={shown} />,
      arithmetic: <ScrewTorque of={setting} />,
      notes: [aboveDrag(setting, shown)],
    })}
  />
));

const ByScrew = part<Props>(({ band, place }, sheet) => (
  <Result
    id={`band-${place}-screw`}
    name={`${bandName(band, place)}: ${sheet.shown().load.name}, by the ${sheet.shown().load.by} alone`}
    felt={false}
    formula={<ScrewFormula />}
    outcome={band.byScrew}
    write={(setting, shown) => ({
      provisional: beforeByScrew(band.byReadings, sheet, place),
      value: <Hand>{shown.quantity(setting.torque, shown.load.name)}</Hand>,
      beside: <Reach of={setting} shown={shown} />,
      arithmetic: <ScrewTorque of={setting} />,
      notes: [aboveDrag(setting, shown)],
    })}
  />
));

const Band = part<Props>(({ band, place }, sheet) => {
  const words = bandDialAndTurns(band, sheet.shown());
  return (
    <>
      <ByReadings band={band} place={place} />
      <ByScrew band={band} place={place} />
      {words && (
        <p class="result-note" data-result={`band-${place}-dial`}>
          {words}
        </p>
      )}
    </>
  );
});

/** All of them. */
export const BandResults = part((_, sheet) =>
  (sheet.result('bands') ?? []).map((band, place) => (
    <Band band={band} place={place} key={place} />
  )),
);
