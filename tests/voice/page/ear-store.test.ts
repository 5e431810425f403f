import { describe, expect, it } from 'vitest';
import { earStore, type Shelf, voicesOn } from '../../../src/voice/page/ear-store.ts';

function shelf(): Shelf & { readonly rows: Map<string, string> } {
  const rows = new Map<string, string>();
  return {
    rows,
    get: (key) => rows.get(key) ?? null,
    set: (key, value) => void rows.set(key, value),
    remove: (key) => void rows.delete(key),
    keys: () => [...rows.keys()],
  };
}

const voice = {
  version: 1,
  patterns: { 'guard closed': ['AAAA', 'BBBB'], next: ['CCCC'] },
} as const;

describe('what the ear keeps', () => {
  it('belongs to one microphone, and a voice to one person', () => {
    const on = shelf();
    const ida = earStore(on, 'headset', 'Ida');
    ida.keepVoice(voice);
    ida.keepChannel('1,2,3');
    expect(earStore(on, 'headset', 'Ida').voice).toEqual(voice);
    expect(earStore(on, 'headset', 'Jo').voice).toBeUndefined();
    expect(earStore(on, 'headset', 'Jo').channel).toBe('1,2,3');
    expect(earStore(on, 'tablet', 'Ida').voice).toBeUndefined();
    expect(earStore(on, 'tablet', 'Ida').channel).toBeUndefined();
  });

  it('is told by name, and is gone when it is forgotten', () => {
    const on = shelf();
    earStore(on, 'headset', 'Ida').keepVoice(voice);
    earStore(on, 'headset', '').keepVoice({ version: 1, patterns: { stop: ['AAAA'] } });
    expect(voicesOn(on).map(({ person, phrases }) => [person, phrases.length])).toEqual([
      ['Ida', 2],
      ['nobody named', 1],
    ]);
    earStore(on, 'headset', 'Ida').forgetVoice();
    expect(voicesOn(on).map(({ person }) => person)).toEqual(['nobody named']);
  });

  it('is not there when it is damaged or of another version', () => {
    const on = shelf();
    const store = earStore(on, 'headset', 'Ida');
    for (const text of ['{', '[]', '{"version":2,"patterns":{}}', '{"version":1}']) {
      on.set(store.voiceKey, text);
      expect(store.voice).toBeUndefined();
      expect(voicesOn(on)).toEqual([]);
    }
  });

  it('leaves other keys of the page alone', () => {
    const on = shelf();
    on.set('theme', 'dark');
    on.set('["somebody else","voice","m","p"]', JSON.stringify(voice));
    expect(voicesOn(on)).toEqual([]);
  });
});
