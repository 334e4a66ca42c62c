/** The part of `unitmath` that the tests use; the declarations it ships describe no module of this name. */
declare module 'unitmath/es/UnitMath.js' {
  export default function unit(text: string): { to(symbol: string): { readonly value: number } };
}
