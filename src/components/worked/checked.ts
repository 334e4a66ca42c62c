/**
 * Checks every name of a worked example against its lesson's model: a misspelt one stops the build with the file that has it.
 * Units: SI in the values.
 */
import { defaults, type Model, type Values } from '../../models/define-model.ts';
import {
  CHANGED,
  type ExampleTemplate,
  examplePieces,
  inputsIn,
  startState,
} from '../../models/example.ts';
import { inputNamed, inputsNamed, kindNamed, type NamePlace } from '../lesson/names.ts';

function need(isMet: boolean, { file }: NamePlace, what: string): void {
  if (!isMet) throw new RangeError(`${file}: ${what}`);
}

function checkText(place: NamePlace, template: ExampleTemplate, where: string, text: string): void {
  for (const piece of examplePieces(text)) {
    if ('text' in piece) {
      need(
        !/[{}]/.test(piece.text),
        place,
        `${where} must be words and {names} (was ${piece.text})`,
      );
      continue;
    }
    const { name, state = CHANGED } = piece;
    kindNamed(place, where, name);
    const isState = state === CHANGED || Object.hasOwn(template.states, state);
    need(isState, place, `${where} must name one of its states (was ${state})`);
  }
}

/** All words of an example in which numbers may stand, by where they are. */
export const wordsIn = (template: ExampleTemplate): Readonly<Record<string, string>> => ({
  situation: template.situation,
  answer: template.answer,
  ...Object.fromEntries(template.steps.map((step, place) => [`step ${place + 1}`, step])),
  notice: template.notice,
  'change say': template.change.say,
  'change happens': template.change.happens,
});

const differs = (one: Values, other: Values) =>
  Object.entries(one).some(([name, value]) => other[name] !== value);

/** Checks states, controls, change and words. @throws RangeError that names the file */
export function checkExample(file: string, model: Model, template: ExampleTemplate): void {
  const place = { file, model };
  const { states, controls, change } = template;
  need(!Object.hasOwn(states, CHANGED), place, `states must not have one called ${CHANGED}`);
  for (const [name, inputs] of Object.entries(states)) inputsNamed(place, `state ${name}`, inputs);
  for (const name of controls) inputNamed(place, 'controls', name);
  inputsNamed(place, 'change', { [change.input]: change.to });
  need(controls.includes(change.input), place, 'change must be of one of its controls');
  const start = inputsIn(template, startState(template));
  need(differs(start, defaults(model)), place, 'the first state must differ from the lesson’s');
  const now: Values = { ...defaults(model), ...start };
  need(now[change.input] !== change.to, place, 'change must differ from the first state');
  for (const [where, text] of Object.entries(wordsIn(template))) {
    checkText(place, template, where, text);
  }
}
