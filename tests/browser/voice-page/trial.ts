/** A page with nothing but the voice room, for the tests in voice.test.ts to play with. */
import type { EarReport } from '../../../src/bench/ports.ts';
import { chooseEar, chooseMouth, voiceWorld } from '../../../src/voice/page/index.ts';

const clock = {
  now: () => Date.now(),
  after(ms: number, call: () => void) {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  },
};

async function trial() {
  const world = voiceWorld(clock);
  const [ears, mouths] = await Promise.all([chooseEar(world), chooseMouth(world)]);
  const reports: EarReport[] = [];
  const ear = ears.make('own');
  return { ears, mouths, ear, reports, report: (report: EarReport) => void reports.push(report) };
}

declare global {
  interface Window {
    trial: ReturnType<typeof trial>;
  }
}

window.trial = trial();
