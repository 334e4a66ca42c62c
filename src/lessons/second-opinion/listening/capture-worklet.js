// Runs beside the page's script, where the sound arrives: hands each block on, and keeps none.
class Capture extends AudioWorkletProcessor {
  process([[block]]) {
    if (block) this.port.postMessage(block.slice());
    return true;
  }
}

registerProcessor('capture', Capture);
