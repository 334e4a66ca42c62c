/** The chart of the log; the library that draws it comes with it. */
import { type LogEntry, logPlot } from '../../charts/log.ts';
import { part } from '../kit/part.tsx';

interface Props {
  readonly entries: readonly LogEntry[];
}

/** The chart, and in words what it shows. */
export const OverTime = part<Props>(({ entries }, sheet) => {
  const setting = sheet.result('setting');
  const shown = sheet.shown();
  const torques = entries.map(({ torque }) => torque);
  const range = shown.range(Math.min(...torques), Math.max(...torques), shown.load.name);
  const title = `${entries.length} settings, from ${range}`;
  const draw = (place: HTMLElement | null) => {
    const { system, load } = shown;
    const known = setting?.ready ? setting.torque : undefined;
    place?.replaceChildren(logPlot({ entries, setting: known, system, load: load.name, title }));
  };
  return (
    <figure class="figure chart">
      <figcaption>{title}.</figcaption>
      <div class="log-plot" ref={draw} />
    </figure>
  );
});
