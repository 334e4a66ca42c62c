/** Strings and pulled beams: a guitar, Fletcher's stiff string, a tie rod. */
import {
  flatBendingStiffness,
  lateralStiffnessClamped,
  lateralStiffnessPinned,
} from '../../../src/core/span/beam-under-tension.ts';
import {
  clampedFrequency,
  clampedFrequencyFletcher,
  pinnedFrequency,
} from '../../../src/core/span/clamped-frequency.ts';
import { pitchFromTension, stringTension } from '../../../src/core/span/pluck.ts';
import { type Answer, type Answers, printed, recomputed } from '../answer.ts';
import { inputReader, numbersAt, type PublishedCase, valueAt } from '../cases.ts';

/** The speed of a wave is twice the span times the lowest note; half a metre gives it at once. */
function guitar(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  const half = { span: 0.5, bendingStiffness: 0, ends: 'pinned' as const };
  const speed = pitchFromTension({ ...half, massPerLength: n('mu_highE') }, n('T_N'));
  const tension = stringTension({ span: 0.5, massPerLength: n('mu_lowE') }, speed);
  return [
    printed('v_m_s', 'speed of the wave', 'm/s', speed, { absolute: 0.005 }),
    printed('T_lowE_N', 'tension of the low string', 'N', tension, { absolute: 0.05 }),
    recomputed('v_m_s', 'speed of the wave', 'm/s', speed, 1e-12),
    recomputed('T_lowE_N', 'tension of the low string', 'N', tension, 1e-12),
  ];
}

function stiffString({ inputs }: PublishedCase): readonly Answer[] {
  const stiffness = numbersAt(inputs, 'EI_over_T_L2');
  return stiffness.flatMap((bendingStiffness, row) => [
    recomputed(`${row} > EI_over_T_L2`, 'EI/(TL²)', '', bendingStiffness, 1e-9),
    ...numbersAt(inputs, 'n').flatMap((harmonic, place) => {
      const string = { tension: 1, massPerLength: 1, bendingStiffness, span: 1, harmonic };
      const share = (note: number) => note / (harmonic / 2);
      const figure = (key: string, quantity: string, note: number) =>
        recomputed(
          `${row} > ${key} > ${place}`,
          `${quantity}, note ${harmonic}`,
          '',
          share(note),
          1e-9,
        );
      return [
        figure('pinned_fn_over_nf0', 'pinned over plain string', pinnedFrequency(string)),
        figure('clamped_exact', 'clamped, exact', clampedFrequency(string)),
        figure('clamped_Fletcher', 'clamped, Fletcher', clampedFrequencyFletcher(string)),
      ];
    }),
  ]);
}

function tieRod(from: PublishedCase): readonly Answer[] {
  const n = inputReader(from);
  return (valueAt(from.inputs, 'cases') as readonly unknown[]).flatMap((_, i) => {
    const of = (key: string) => n(`cases > ${i} > ${key}`);
    const strip = { youngsModulus: of('E_Pa'), width: of('width_m'), thickness: of('thickness_m') };
    const span = {
      tension: of('T_N'),
      span: of('L_m'),
      bendingStiffness: flatBendingStiffness(strip),
    };
    const string = lateralStiffnessPinned({ ...span, bendingStiffness: 0 });
    const sag = (key: string, quantity: string, stiffness: number) =>
      recomputed(`${i} > ${key}`, quantity, 'm', of('Q_N') / stiffness, 1e-9);
    return [
      sag('pinned_m', 'sag, pinned ends', lateralStiffnessPinned(span)),
      sag('clamped_m', 'sag, clamped ends', lateralStiffnessClamped(span)),
      sag('string_m', 'sag of a string', string),
    ];
  });
}

export const spanAnswers: Answers = {
  'openstax-guitar-string': guitar,
  'fletcher-stiff-string-a': stiffString,
  'tensioned-beam-central-load-a': tieRod,
};
