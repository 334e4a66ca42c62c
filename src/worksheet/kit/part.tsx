/** Parts of the sheet: each is drawn again only when what it was given, or what it asked of the sheet, has changed. */
import { effect } from '@preact/signals-core';
import { Component, type ComponentChild, createContext, type JSX } from 'preact';
import type { SheetView } from '../state/view.ts';

const Given = createContext<SheetView | undefined>(undefined);

/** Gives its children the sheet they are part of. */
export const SheetGiven = Given.Provider;

const alike = (a: unknown, b: unknown): boolean =>
  Object.is(a, b) ||
  (Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((x, i) => x === b[i]));

function isSame(was: object, is: object): boolean {
  const names = Object.keys(is) as never[];
  const isAlike = names.every((name) => alike(was[name], is[name]));
  return isAlike && names.length === Object.keys(was).length;
}

/** A component out of how it is drawn from its properties and the sheet. */
export function part<Props extends object = object>(
  draw: (props: Props, sheet: SheetView) => ComponentChild,
): (props: Props) => JSX.Element {
  class Part extends Component<Props> {
    static override contextType = Given;
    private stop = () => {};
    private isStale = false;

    override shouldComponentUpdate(next: Props): boolean {
      return this.isStale || !isSame(this.props, next);
    }

    override componentWillUnmount(): void {
      this.stop();
    }

    /** Drawn inside an effect, which so learns what was asked; when that changes, it only calls for a new drawing. */
    render(): ComponentChild {
      let drawn: ComponentChild;
      let isFirst = true;
      this.stop();
      this.isStale = false;
      this.stop = effect(() => {
        if (isFirst) drawn = draw(this.props, this.context as SheetView);
        else {
          this.isStale = true;
          this.setState({});
        }
        isFirst = false;
      });
      return drawn;
    }
  }
  return Part as unknown as (props: Props) => JSX.Element; // as it is used: what it is inside is nobody's concern
}
