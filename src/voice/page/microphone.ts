/** The one owner of the microphone: one stream, opened once, let go at the end. */
import type { Deafness } from '../../bench/ports.ts';
import { englishLanguage, type Language } from '../../texts/index.ts';
import { deafness, type WhyDeaf } from './deafness.ts';
import type { MicrophoneLock } from './microphone-lock.ts';

export interface Microphone {
  readonly stream: MediaStream;
  /** Which device it is: the same from visit to visit, on this page only. */
  readonly id: string;
  /** Tells when the device is pulled out. */
  onGone(call: () => void): void;
  release(): void;
}

/** Untouched sound: the browser's clean-up hurts recognition more than the noise it takes away. */
export const RAW_CAPTURE: MediaTrackConstraints = {
  channelCount: { ideal: 1 },
  sampleRate: { ideal: 16_000 },
  echoCancellation: { ideal: false },
  noiseSuppression: { ideal: false },
  autoGainControl: { ideal: false },
};

/** Opens the microphone, or says why not. Never rejects. */
export async function openMicrophone(
  devices: Pick<MediaDevices, 'getUserMedia'> | undefined,
  lock: MicrophoneLock,
  language: Language = englishLanguage,
): Promise<Microphone | Deafness> {
  if (!devices) return deafness(language, 'insecurePage');
  const unlock = await lock();
  if (!unlock) return deafness(language, 'otherTab');
  try {
    const stream = await devices.getUserMedia({ audio: RAW_CAPTURE, video: false });
    return hold(stream, unlock);
  } catch (problem) {
    unlock();
    return deafness(language, whyNot(problem));
  }
}

function hold(stream: MediaStream, unlock: () => void): Microphone {
  const tracks = stream.getAudioTracks();
  return {
    stream,
    id: idOf(tracks[0]),
    onGone(call) {
      for (const track of tracks) track.addEventListener('ended', call, { once: true });
    },
    release() {
      for (const track of tracks) track.stop();
      unlock();
    },
  };
}

/** Some browsers give no settings; then its name must do. */
function idOf(track: MediaStreamTrack | undefined): string {
  return track?.getSettings?.().deviceId || track?.label || 'microphone';
}

function whyNot(problem: unknown): WhyDeaf {
  const name = problem instanceof Error ? problem.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  if (name === 'NotReadableError' || name === 'AbortError') return 'otherProgram';
  return 'noMicrophone';
}
