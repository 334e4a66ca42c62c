/** Plays a sound that the page has made itself, at the rate of the device. Units: Hz. */
import type { Sound } from './listening/sound.ts';

/** Plays what is made for a rate, in place of what is still playing; false where nothing can be played. */
export type Play = (make: (rate: number) => Sound) => boolean;

/** A player on a device, which is asked for with each sound. */
export function player(device: () => AudioContext | undefined): Play {
  let playing: AudioBufferSourceNode | undefined;
  return (make) => {
    const context = device();
    if (!context) return false;
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
