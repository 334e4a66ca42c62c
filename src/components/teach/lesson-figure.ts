/** The figures of the lessons by their names, for pages that show one still. */
import type { FigureModule } from '../../figures/figure.ts';

const modules = import.meta.glob<{ figure: FigureModule }>('../../lessons/*/*.figure.tsx', {
  eager: true,
});

/** A lesson's figure. @throws RangeError where the lesson has none of that name */
export function lessonFigure(lesson: string, name: string): FigureModule {
  const figure = modules[`../../lessons/${lesson}/${name}.figure.tsx`]?.figure;
  if (!figure) throw new RangeError(`figure must be one of ${lesson} (was ${name})`);
  return figure;
}
