/** The Slate's devices: one question heard, one answer spoken, the last answers kept. */

import { z } from 'zod';
import type { SlateReply } from '../bench/index.ts';
import type { Ear } from '../bench/ports.ts';
import type { Logbook } from '../logbook/index.ts';
import type { SlateDesk } from '../screens/world.ts';
import { type Language, sayIn, slateTexts, voiceTexts } from '../texts/index.ts';
import { browserClock } from './clock.ts';
import type { SettingsKeeper } from './settings.ts';
import type { LateVoices } from './voices.ts';

export const slateKey = 'slate';
/** A question that does not come by then is asked for again by a tap. */
const mostWaitMs = 20_000;
/** Older answers are worked out again as fast as they are found. */
const mostKept = 20;

const replyShape = z.object({
  question: z.string(),
  rule: z.string(),
  title: z.string(),
  shown: z.string(),
  spoken: z.string(),
  given: z.array(z.string()).default([]),
  working: z.string(),
  formula: z.string(),
  ruledBy: z.string().exactOptional(),
  source: z.string(),
  why: z.string(),
});

export const parseReplies = (value: unknown): readonly SlateReply[] =>
  z.array(replyShape).parse(value);

export interface SlateWorld {
  readonly logbook: Pick<Logbook, 'keep' | 'recall'>;
  readonly settings: SettingsKeeper;
  readonly voices: LateVoices;
  readonly language: Language;
}

export function openSlateDesk({ logbook, settings, voices, language }: SlateWorld): SlateDesk {
  const last = async (): Promise<readonly SlateReply[]> =>
    (await logbook.recall(slateKey, parseReplies)) ?? [];
  return {
    last,
    async keep(reply) {
      const others = (await last()).filter((one) => one.question !== reply.question);
      const kept = [reply, ...others].slice(0, mostKept);
      await logbook.keep(slateKey, kept);
      return kept;
    },
    async listen(report) {
      const ear = (await voices.found).ear(settings.current());
      if (!ear) {
        report({ kind: 'deaf', sentence: sayIn(language, slateTexts)('notListening') });
        return async () => undefined;
      }
      return hearOne(ear, report, language);
    },
    async say(line) {
      const { rate, volume, pitch } = settings.current();
      await (await voices.found).mouth(settings.current()).say(line, { rate, volume, pitch });
    },
  };
}

/** What is said first ends it: the microphone is never left open on a screen that waits for nothing. */
async function hearOne(
  ear: Ear,
  report: Parameters<SlateDesk['listen']>[0],
  language: Language,
): Promise<() => Promise<void>> {
  let open = true;
  const { slatePhrases } = await import('../bench/index.ts');
  ear.listenFor({ phrases: slatePhrases(language) });
  let cancelLimit = () => {};
  const close = async () => {
    if (!open) return;
    open = false;
    cancelLimit();
    await ear.close();
  };
  const giveUp = (sentence: string) => {
    if (!open) return;
    void close();
    report({ kind: 'deaf', sentence });
  };
  const done = (text: string) => {
    if (!open || text.trim() === '') return;
    void close();
    report({ kind: 'heard', text });
  };
  await ear.open((heard) => {
    if (heard.kind === 'listening' && open) report({ kind: 'listening' });
    if (heard.kind === 'heard') done(heard.heard.text);
    if (heard.kind === 'unclear') done(heard.text);
    if (heard.kind === 'deaf') giveUp(heard.deafness.sentence);
  });
  if (open)
    cancelLimit = browserClock.after(mostWaitMs, () =>
      giveUp(sayIn(language, voiceTexts)('unheard')),
    );
  return close;
}
