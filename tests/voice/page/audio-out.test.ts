import { afterEach, describe, expect, it, vi } from 'vitest';
import { audioOut } from '../../../src/voice/page/audio-out.ts';

/** An AudioContext as the notes describe it: asleep until a tap, and put to sleep again by a locked screen. */
class FakeContext {
  static refuses = false;
  state = 'suspended';
  async resume(): Promise<void> {
    if (FakeContext.refuses) throw new DOMException('no', 'NotAllowedError');
    this.state = 'running';
  }
}

function page() {
  const calls: (() => void)[] = [];
  return {
    addEventListener: (_: string, call: () => void) => void calls.push(call),
    touch: () => {
      for (const call of calls) call();
    },
  };
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 0));

afterEach(() => {
  vi.unstubAllGlobals();
  FakeContext.refuses = false;
});

describe('the way out for sound', () => {
  it('is shut before the first tap and open after it', async () => {
    vi.stubGlobal('AudioContext', FakeContext);
    const at = page();
    const out = audioOut(at as unknown as Document);
    expect(out.context()).toBeNull();
    at.touch();
    await settled();
    expect(out.context()).not.toBeNull();
  });

  it('is woken by the next tap after the system has put it to sleep', async () => {
    vi.stubGlobal('AudioContext', FakeContext);
    const at = page();
    const out = audioOut(at as unknown as Document);
    await out.prime();
    const context = out.context() as unknown as FakeContext;
    context.state = 'interrupted';
    expect(out.context()).toBeNull();
    at.touch();
    await settled();
    expect(out.context()).toBe(context);
  });

  it('says that sound is not allowed where the browser refuses or has none', async () => {
    vi.stubGlobal('AudioContext', FakeContext);
    FakeContext.refuses = true;
    expect(await audioOut(page() as unknown as Document).prime()).toBe(false);
    vi.stubGlobal('AudioContext', undefined);
    expect(await audioOut(page() as unknown as Document).prime()).toBe(false);
  });
});
