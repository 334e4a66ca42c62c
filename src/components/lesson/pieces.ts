/** The pieces of which the text of a lesson is made, by the names that it uses. `Astro.locals.lesson` must be set. */
import Aside from './Aside.astro';
import Caution from './Caution.astro';
import Equation from './Equation.astro';
import Figure from './Figure.astro';
import Fold from './Fold.astro';
import Go from './Go.astro';
import Guess from './Guess.astro';
import LiveInput from './LiveInput.astro';
import Part from './Part.astro';
import Checks from './questions/Checks.astro';
import ReadOff from './questions/ReadOff.astro';
import S from './S.astro';
import StartAgain from './StartAgain.astro';
import Term from './Term.astro';
import UnitsNote from './UnitsNote.astro';
import V from './V.astro';

/** All of them. */
export const pieces = {
  Aside,
  Caution,
  Equation,
  Figure,
  Fold,
  Go,
  Guess,
  LiveInput,
  Part,
  S,
  StartAgain,
  V,
  Term,
  UnitsNote,
  Checks,
  ReadOff,
};
