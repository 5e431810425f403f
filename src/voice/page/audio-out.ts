/** The page's one way out for sound, which a browser allows only after a tap. */

export interface AudioOut {
  /** The running context, or null as long as no tap has allowed sound. */
  context(): AudioContext | null;
  /** Call in a tap: makes and wakes the context. Resolves true when sound can be heard. */
  prime(): Promise<boolean>;
}

/** Taps and keys that wake it again later: some systems stop it when the screen was locked. */
const GESTURES = ['pointerdown', 'keydown'] as const;

export function audioOut(page: Pick<Document, 'addEventListener'>): AudioOut {
  let context: AudioContext | null = null;
  const prime = async () => {
    try {
      context ??= new AudioContext();
      if (context.state !== 'running') await context.resume();
    } catch {
      return false;
    }
    return context.state === 'running';
  };
  for (const gesture of GESTURES) {
    page.addEventListener(gesture, () => void prime(), { passive: true });
  }
  return { context: () => (context?.state === 'running' ? context : null), prime };
}
