/**
 * A slider and a box as twins on one value. What was typed stays in the box; a refusal stands beside it in the
 * reader's words; the value keeps its last good state.
 */
import type { ReadonlySignal, Signal } from '@preact/signals-core';
import { clamped, type QuantityInput, snapped } from '../../models/define-model.ts';
import { formatInput, formatQuantity } from '../../units/format-quantity.ts';
import type { UnitSystem } from '../../units/kinds.ts';
import { fromSi, toSi } from '../../units/si-value.ts';
import { NOT_ARRIVED } from '../fetched-later.ts';
import { stepsOfKey } from '../keys.ts';
import { type Parse, reading } from '../reading.ts';
import { stepped } from './steps.ts';
import type { StoreElement } from './store-element.ts';
import { setText } from './value.ts';

interface Twins {
  readonly slider: HTMLInputElement;
  readonly box: HTMLInputElement;
  readonly refusal: HTMLElement;
  readonly spec: QuantityInput;
  readonly value: Signal<number>;
  readonly system: ReadonlySignal<UnitSystem>;
}

function refuse({ box, refusal }: Twins, reason: string): void {
  setText(refusal, reason);
  refusal.hidden = reason === '';
  box.setAttribute('aria-invalid', String(reason !== ''));
}

function outOfRange(spec: QuantityInput, system: UnitSystem): string {
  const [low, high] = [spec.min, spec.max].map((limit) => formatQuantity(limit, spec.kind, system));
  return `The figure goes from ${low} to ${high}. It stays where it was.`;
}

/** Takes a text for the value, or says why not. What is beyond a bound by no more than our words for the bound are is the bound. */
function judge(twins: Twins, parse: Parse, text: string): void {
  const { spec, value, system } = twins;
  const read = (words: string) => parse(words, spec.kind, system.value);
  const typed = read(text);
  if (!typed.ok) {
    refuse(twins, typed.reason);
    return;
  }
  const near = clamped(spec, typed.value);
  const named = read(formatQuantity(near, spec.kind, system.value));
  const rounded = named.ok ? Math.abs(named.value - near) : 0;
  const inRange = Math.abs(typed.value - near) <= rounded;
  if (inRange) value.value = near;
  refuse(twins, inRange ? '' : outOfRange(spec, system.value));
}

function take(twins: Twins): void {
  reading.use(
    (parse) => judge(twins, parse, twins.box.value),
    () => refuse(twins, NOT_ARRIVED),
  );
}

/** The slider goes as far as the input may, in the present units. */
function showRange({ slider, spec, system }: Twins): void {
  const shown = (si: number) => String(fromSi(si, spec.kind, system.value));
  slider.min = shown(spec.min);
  slider.max = shown(spec.max);
}

/** Puts the value into both twins, but never over what is being typed. */
function show(twins: Twins): void {
  const { slider, box, spec, value, system } = twins;
  slider.value = String(fromSi(value.value, spec.kind, system.value));
  slider.setAttribute('aria-valuetext', formatQuantity(value.value, spec.kind, system.value));
  if (document.activeElement === box) return;
  box.value = formatInput(value.value, spec.kind, system.value);
  refuse(twins, '');
}

/** The value goes where the slider stands. */
function follow({ slider, spec, value, system }: Twins): void {
  value.value = snapped(spec, system.value, toSi(Number(slider.value), spec.kind, system.value));
}

/** What a slider says; a browser rounds what it was built with to fifteen digits. */
const said = (text: string) => Number(text).toPrecision(9);

/** Reads what was typed or moved before the script was there; what is wrong about it stays to be seen until something moves. */
function keepEarlyTyping(twins: Twins): void {
  const { box, slider, refusal } = twins;
  const early = box.value;
  if (early === box.defaultValue) {
    if (said(slider.value) !== said(slider.defaultValue)) follow(twins);
    return;
  }
  const see = (parse: Parse) => {
    judge(twins, parse, early);
    if (refusal.hidden || document.activeElement === box) return;
    box.value = early;
    box.focus({ preventScroll: true });
  };
  reading.use(see, () => refuse(twins, NOT_ARRIVED));
}

/** Binds the slider and the box inside `host` to a value; the first time they may hold what came before the script. */
export function bindTwins(
  host: StoreElement,
  { spec, value }: Pick<Twins, 'spec' | 'value'>,
  system: ReadonlySignal<UnitSystem>,
  isFirst: boolean,
): void {
  const slider = host.querySelector<HTMLInputElement>('input[type="range"]');
  const box = host.querySelector<HTMLInputElement>('input[type="text"]');
  const refusal = host.querySelector<HTMLElement>('.refusal');
  if (!slider || !box || !refusal) return;
  const twins = { slider, box, refusal, spec, value, system };
  slider.step = 'any';
  host.listen(slider, 'input', () => follow(twins));
  host.listen(slider, 'keydown', (event) => {
    const steps = stepsOfKey(event.key);
    if (steps === undefined) return;
    event.preventDefault();
    value.value = stepped(spec, system.value, value.value, steps);
  });
  host.listen(box, 'input', () => take(twins));
  host.listen(box, 'blur', () => {
    if (refusal.hidden) show(twins);
  });
  if (isFirst) keepEarlyTyping(twins);
  host.follow(() => showRange(twins));
  host.follow(() => show(twins));
}
