/** Copies the microphone's samples out of the audio thread, a tenth of a second at a time, and nothing else. */

declare const registerProcessor: (name: string, processor: new () => AudioWorkletProcessor) => void;
declare const sampleRate: number;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}

const PIECE = Math.round(sampleRate / 10);

class Capture extends AudioWorkletProcessor {
  private piece = new Float32Array(PIECE);
  private filled = 0;

  process(inputs: readonly (readonly Float32Array[])[]): boolean {
    for (const sample of inputs[0]?.[0] ?? []) {
      this.piece[this.filled++] = sample;
      if (this.filled === PIECE) this.send();
    }
    return true;
  }

  private send(): void {
    this.port.postMessage(this.piece, [this.piece.buffer]);
    this.piece = new Float32Array(PIECE);
    this.filled = 0;
  }
}

registerProcessor('followrest-capture', Capture);
