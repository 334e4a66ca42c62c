/** What we use of the package: the magnitudes of a real signal's spectrum, 2/N times the sum, N/2 of them. */
declare module 'fourier-transform' {
  export default function magnitudes(
    samples: Float64Array,
    into?: Float64Array<ArrayBuffer>,
  ): Float64Array<ArrayBuffer>;
}
