/** Browser voices as they are reported to misbehave (public issue threads); see each title. */
import { describe, expect, it } from 'vitest';
import type { SayEnd } from '../../../src/bench/ports.ts';
import { browserMouth } from '../../../src/voice/page/browser-mouth.ts';
import type { Synthesis, Utterance } from '../../../src/voice/page/speech-synthesis.ts';
import { fakeClock } from '../fake-clock.ts';

class FakeUtterance implements Utterance {
  lang = '';
  rate = 1;
  pitch = 1;
  volume = 1;
  voice: Utterance['voice'] = null;
  onstart: (() => void) | null = null;
  onend: (() => void) | null = null;
  onerror: ((event: { readonly error: string }) => void) | null = null;
  constructor(public text: string) {}
}

const voice = (name: string, localService = true, lang = 'en-GB') => ({
  name,
  lang,
  voiceURI: name,
  localService,
});

type Behaviour = (utterance: FakeUtterance) => void;
const speaks: Behaviour = (u) => {
  u.onstart?.();
  u.onend?.();
};

function world(behave: Behaviour, voices = [voice('far', false), voice('one'), voice('two')]) {
  const clock = fakeClock();
  const spoken: FakeUtterance[] = [];
  const calls: string[] = [];
  let leave = () => {};
  const synthesis: Synthesis & { speaking: boolean } = {
    speaking: false,
    pending: false,
    getVoices: () => voices,
    speak(utterance) {
      calls.push('speak');
      spoken.push(utterance as FakeUtterance);
      clock.after(1, () => behave(utterance as FakeUtterance));
    },
    cancel: () => {
      calls.push('cancel');
      synthesis.speaking = false;
    },
    resume: () => calls.push('resume'),
  };
  const make = () =>
    browserMouth({
      synthesis,
      Utterance: FakeUtterance,
      clock,
      cues: { play: async () => {} },
      onLeave: (call) => {
        leave = call;
      },
    });
  return { clock, spoken, calls, synthesis, make, leave: () => leave() };
}

async function say(w: ReturnType<typeof world>, line: string, ms = 200_000) {
  const made = w.make();
  await w.clock.pass(6_000);
  const mouth = await made;
  if (!mouth) throw new Error('no voice');
  let end: SayEnd | undefined;
  void mouth.say(line).then((e) => {
    end = e;
  });
  await w.clock.pass(ms);
  return { end, mouth };
}

describe('the browser mouth', () => {
  it('uses only voices of this device', async () => {
    const w = world(speaks);
    expect((await say(w, 'Close the guard.')).end).toBe('said');
    expect(w.spoken.map((u) => u.voice?.name)).toEqual(['one']);
  });

  it('speaks a long line in pieces, whole and in order', async () => {
    const line = `${'Set the tool to the work, then wind it back. '.repeat(8)}Say next.`;
    const w = world(speaks);
    expect((await say(w, line)).end).toBe('said');
    expect(w.spoken.length).toBeGreaterThan(2);
    expect(Math.max(...w.spoken.map((u) => u.text.length))).toBeLessThanOrEqual(200);
    expect(w.spoken.map((u) => u.text).join(' ')).toBe(line);
  });

  it('tries again, then another voice, when neither end nor error comes', async () => {
    const w = world((u) => u.voice?.name === 'two' && speaks(u));
    expect((await say(w, 'Next.')).end).toBe('said');
    expect(w.spoken.map((u) => u.voice?.name)).toEqual(['one', 'one', 'two']);
  });

  it('has failed, in time, when no voice ever ends', async () => {
    const w = world((u) => u.onstart?.());
    expect((await say(w, 'Next.')).end).toBe('failed');
  });

  it('has failed at once when the browser wants a tap first', async () => {
    const w = world((u) => u.onerror?.({ error: 'not-allowed' }));
    expect((await say(w, 'Next.', 100)).end).toBe('failed');
    expect(w.spoken).toHaveLength(1);
  });

  it('takes canceled and interrupted as cut, not as failed', async () => {
    for (const error of ['canceled', 'interrupted']) {
      const w = world((u) => u.onerror?.({ error }));
      expect((await say(w, 'Next.')).end).toBe('cut');
    }
  });

  it('cuts a line at once when hushed and leaves nothing paused', async () => {
    const w = world(() => {});
    const { mouth } = await say(w, 'Next.', 100);
    w.synthesis.speaking = true;
    let end: SayEnd | undefined;
    void mouth.say('A line.').then((e) => {
      end = e;
    });
    mouth.hush();
    await w.clock.pass(1);
    expect(end).toBe('cut');
    expect(w.calls.lastIndexOf('resume')).toBeGreaterThan(w.calls.lastIndexOf('cancel'));
  });

  it('waits after emptying the queue before it speaks', async () => {
    const w = world(speaks);
    const { mouth } = await say(w, 'One.');
    w.synthesis.speaking = true;
    void mouth.say('Two.');
    await w.clock.pass(10);
    expect(w.spoken).toHaveLength(1);
    await w.clock.pass(200);
    expect(w.spoken.map((u) => u.text)).toEqual(['One.', 'Two.']);
  });

  it('is silent when the page loads and when it is left', async () => {
    const w = world(speaks);
    await say(w, 'One.');
    expect(w.calls[0]).toBe('cancel');
    const before = w.calls.length;
    w.leave();
    expect(w.calls.slice(before)).toEqual(['cancel']);
  });

  it('is not there when there are no voices, or only distant or foreign ones', async () => {
    for (const voices of [[], [voice('far', false)], [voice('fern', true, 'de-DE')]]) {
      const w = world(speaks, voices);
      const made = w.make();
      await w.clock.pass(6_000);
      expect(await made).toBeNull();
    }
  });

  it('finds voices that come late and without an event', async () => {
    const voices: ReturnType<typeof voice>[] = [];
    const w = world(speaks, voices);
    const made = w.make();
    await w.clock.pass(2_000);
    voices.push(voice('late'));
    await w.clock.pass(500);
    expect(await made).not.toBeNull();
  });
});
