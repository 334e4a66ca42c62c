/**
 * The microphone: asked for, heard, let go. The last few seconds are kept in memory and nowhere else; nothing is recorded
 * to a file, nothing is sent.
 * Units: Hz, s.
 */
import worklet from './capture-worklet.js?worker&url';
import type { Sound } from './sound.ts';

/** Why there is nothing to hear. */
export type NoMicrophone = 'refused' | 'absent' | 'busy' | 'insecure';

/** An open microphone. */
export interface Microphone {
  /** The last seconds, fewer at the beginning. */
  readonly heard: () => Sound;
  readonly close: () => void;
}

const SECONDS = 3;
const RAW = { echoCancellation: false, noiseSuppression: false, autoGainControl: false };

/** The last samples, in the order in which they came. */
class Ring {
  private readonly samples: Float32Array;
  private count = 0;

  constructor(length: number) {
    this.samples = new Float32Array(length);
  }

  add(block: Float32Array): void {
    this.samples.copyWithin(0, block.length);
    this.samples.set(block, this.samples.length - block.length);
    this.count = Math.min(this.samples.length, this.count + block.length);
  }

  all(): Float32Array {
    return this.samples.slice(this.samples.length - this.count);
  }
}

/** Why the browser did not give the microphone, from the name of its error. */
export function reasonOf(name: string): NoMicrophone {
  if (name === 'NotFoundError' || name === 'OverconstrainedError') return 'absent';
  return name === 'NotReadableError' || name === 'AbortError' ? 'busy' : 'refused';
}

async function captured(stream: MediaStream) {
  const context = new AudioContext();
  await context.resume();
  await context.audioWorklet.addModule(worklet);
  const node = new AudioWorkletNode(context, 'capture', { numberOfOutputs: 0 });
  context.createMediaStreamSource(stream).connect(node);
  return { context, node };
}

/** Asks for the microphone and opens it; `taken` is called when it is taken away while it is open. */
export async function openMicrophone(taken: () => void): Promise<Microphone | NoMicrophone> {
  const devices = navigator.mediaDevices as MediaDevices | undefined;
  if (!devices || !isSecureContext) return 'insecure';
  const stream = await devices
    .getUserMedia({ audio: RAW })
    .catch(({ name }: Error) => reasonOf(name));
  if (typeof stream === 'string') return stream;
  const letGo = () => {
    for (const track of stream.getTracks()) track.stop();
  };
  const capture = await captured(stream).catch(letGo);
  if (!capture) return 'busy';
  const { context, node } = capture;
  const ring = new Ring(SECONDS * context.sampleRate);
  node.port.onmessage = ({ data }: MessageEvent<Float32Array>) => ring.add(data);
  for (const track of stream.getTracks()) track.addEventListener('ended', taken);
  return {
    heard: () => ({ samples: ring.all(), rate: context.sampleRate }),
    close: () => {
      letGo();
      void context.close();
    },
  };
}
