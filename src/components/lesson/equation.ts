/**
 * Equations with a model's values in them, set at build time. Two macros of ours: `\q{name}` is the symbol of a
 * quantity of the model, in its ink; `\v{name}` is its present value with its unit, marked so that it can change, in
 * the visible half and in the MathML half alike.
 */
import { numberAt } from '../../models/define-model.ts';
import { formatQuantity } from '../../units/format-quantity.ts';
import { setTex } from '../reference/set-tex.ts';
import type { LessonContext } from './context.ts';
import { quantityNamed } from './names.ts';

const MARK = 'LIVE';
const slot = (name: string) =>
  `${MARK}${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}END`;
const nameOf = (text: string) =>
  text.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

function tag(element: 'span' | 'mtext', name: string, context: LessonContext): string {
  const { kind } = quantityNamed(context, '\\v', name);
  const one = (system: 'metric' | 'us') => {
    const text = formatQuantity(numberAt(context.values[system], name), kind, system);
    return `<${element} class="q-${system}" data-live="${name}">${text}</${element}>`;
  };
  return one('metric') + one('us');
}

/** KaTeX's HTML and MathML for a display or inline equation of a lesson. */
export function equationHtml(tex: string, context: LessonContext, displayMode: boolean): string {
  const source = tex
    .replace(/\\q\{(\w+)\}/g, (_, name: string) => {
      const { ink, symbol } = quantityNamed(context, '\\q', name);
      return `\\htmlData{sym=${name}}{\\htmlClass{${ink}}{${symbol}}}`;
    })
    .replace(/\\v\{(\w+)\}/g, (_, name: string) => {
      const { ink } = quantityNamed(context, '\\v', name);
      return `\\htmlData{sym=${name}}{\\htmlClass{value ${ink}}{\\text{${slot(name)}}}}`;
    });
  const mathml = new RegExp(`<mtext>${MARK}([a-z-]+)END</mtext>`, 'g');
  const visible = new RegExp(`${MARK}([a-z-]+)END`, 'g');
  return setTex(source, displayMode)
    .replace(mathml, (_, name: string) => tag('mtext', nameOf(name), context))
    .replace(visible, (_, name: string) => tag('span', nameOf(name), context));
}
