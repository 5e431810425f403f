/** The browser's own voices as a mouth. */
import type { Mouth, SayEnd } from '../../bench/ports.ts';
import { englishLanguage, hearingTexts, type Language, sayIn } from '../../texts/index.ts';
import { clauses } from '../shared/clauses.ts';
import { usableVoices, type VoiceOffered } from '../shared/voice-choice.ts';
import type { Cues } from './cues.ts';
import { emptyQueue, type Manner, type SpeakingWorld, type UtterEnd, utter } from './utter.ts';
import { findVoices } from './voices.ts';

export interface BrowserMouthWorld extends SpeakingWorld {
  /** What is spoken: English without it. */
  readonly lang?: string;
  /** Of its name; English without it. */
  readonly language?: Language;
  readonly cues: Cues;
  /** Calls back when the page is left; the browser would go on talking after a reload. */
  onLeave(call: () => void): void;
}

/** Makes the mouth, or null when the browser has no voice of its own for the language within five seconds. */
export async function browserMouth(
  world: BrowserMouthWorld,
  wantedUri?: string,
): Promise<Mouth | null> {
  world.synthesis.cancel();
  world.onLeave(() => world.synthesis.cancel());
  const voices = usableVoices(
    await findVoices(world.synthesis, world.clock),
    wantedUri,
    languageOf(world),
  );
  return voices.length === 0 ? null : new BrowserMouth(world, wantedUri);
}

function languageOf({ lang = 'en' }: BrowserMouthWorld): string {
  return lang.split('-')[0] ?? lang;
}

class BrowserMouth implements Mouth {
  readonly name: string;
  /** Counts lines: a line that finds itself outdated is cut. */
  private line = 0;
  private cut = () => {};
  private justCancelled = false;
  private speaking: Promise<unknown> = Promise.resolve();

  constructor(
    private readonly world: BrowserMouthWorld,
    private readonly wantedUri: string | undefined,
  ) {
    this.name = sayIn(world.language ?? englishLanguage, hearingTexts)('mouthBrowser');
  }

  say(line: string, manner: Manner = {}): Promise<SayEnd> {
    this.hush();
    const mine = ++this.line;
    const cut = new Promise<SayEnd>((resolve) => {
      this.cut = () => resolve('cut');
    });
    const sound = this.speaking.then(() => this.sayPieces(line, manner, mine));
    this.speaking = sound.catch(() => {});
    return Promise.race([sound.catch((): SayEnd => 'failed'), cut]);
  }

  async cue(cue: 'heard' | 'unclear' | 'stop'): Promise<void> {
    await this.world.cues.play(cue);
  }

  hush(): void {
    this.line++;
    this.cut();
    this.cut = () => {};
    if (this.world.synthesis.speaking || this.world.synthesis.pending) {
      this.justCancelled = true;
      this.world.synthesis.cancel();
      this.world.synthesis.resume();
    }
  }

  private async sayPieces(line: string, manner: Manner, mine: number): Promise<SayEnd> {
    await emptyQueue(this.world, this.justCancelled);
    this.justCancelled = false;
    for (const piece of clauses(line)) {
      if (mine !== this.line) return 'cut';
      const end = await this.sayPiece(piece, manner, mine);
      if (end === 'cut') return 'cut';
      if (end !== 'said') return 'failed';
    }
    return 'said';
  }

  /** A piece that gave no sound is tried once more, then with another voice; then it has failed. */
  private async sayPiece(piece: string, manner: Manner, mine: number): Promise<UtterEnd> {
    let end: UtterEnd = 'silent';
    for (const voice of this.voicesToTry()) {
      end = await utter(this.world, piece, voice, manner);
      if (end === 'said' || end === 'barred') return end;
      if (end === 'cut' || mine !== this.line) return 'cut';
      await emptyQueue(this.world);
    }
    return end;
  }

  /** Resolved anew each time: voices change names and vanish while the page is open. */
  private voicesToTry(): readonly VoiceOffered[] {
    const [first, second] = usableVoices(
      this.world.synthesis.getVoices(),
      this.wantedUri,
      languageOf(this.world),
    );
    if (!first) return [];
    return second ? [first, first, second] : [first, first];
  }
}
