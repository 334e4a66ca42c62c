/** Plays a sound that the page has made itself, at the rate of the device. Units: Hz. */
import type { Sound } from './listening/sound.ts';

/** Plays what is made for a rate, in place of what is still playing; false where nothing can be played. */
export type Play = (make: (rate: number) => Sound) => boolean;

/** A player; the device is asked for with the first sound. */
export function player(): Play {
  let context: AudioContext | undefined;
  let playing: AudioBufferSourceNode | undefined;
  return (make) => {
    if (!('AudioContext' in globalThis)) return false;
    context ??= new AudioContext();
    void context.resume();
    playing?.stop();
    const { samples, rate } = make(context.sampleRate);
    const buffer = context.createBuffer(1, samples.length, rate);
    buffer.copyToChannel(Float32Array.from(samples), 0);
    playing = new AudioBufferSourceNode(context, { buffer });
    playing.connect(context.destination);
    playing.start();
    return true;
  };
}
