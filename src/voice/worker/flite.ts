/** The speaking engine: one line of text in, its sound out. */
import { ConsoleStdout, File, OpenFile, PreopenDirectory, WASI } from '@bjorn3/browser_wasi_shim';
import { readWav, type Sound } from '../shared/wav.ts';

/** The voices inside the engine, by the names it knows them by. */
export const FLITE_VOICES = ['slt', 'rms', 'awb', 'kal16', 'kal'] as const;
export type FliteVoice = (typeof FLITE_VOICES)[number];

/** Speed of speech, 1 as the voice is, larger is faster. */
export interface FliteManner {
  readonly voice: FliteVoice;
  readonly rate?: number;
}

/** Makes a fresh instance of the engine's program with these imports. */
export type FliteProgram = (
  imports: Record<string, Record<string, (...values: never[]) => unknown>>,
) => Promise<unknown>;

/** Makes the sound of one line. The program runs once a line and ends; it keeps no state. */
export async function fliteSound(
  program: FliteProgram,
  text: string,
  manner: FliteManner,
): Promise<Sound> {
  const folder = new PreopenDirectory('/out', new Map());
  const complaints: string[] = [];
  const wasi = new WASI(
    argumentsFor(text, manner),
    [],
    [
      new OpenFile(new File([])),
      ConsoleStdout.lineBuffered(() => {}),
      ConsoleStdout.lineBuffered((line) => complaints.push(line)),
      folder,
    ],
    { debug: false },
  );
  const instance = await program({ wasi_snapshot_preview1: wasi.wasiImport });
  const code = wasi.start(instance as Parameters<typeof wasi.start>[0]);
  const made = folder.dir.contents.get('line.wav');
  if (code !== 0 || !(made instanceof File)) {
    throw new Error(`The voice made no sound: ${complaints.join(' ') || `exit ${code}`}`);
  }
  return readWav(made.data);
}

function argumentsFor(text: string, { voice, rate = 1 }: FliteManner): string[] {
  const stretch = (1 / rate).toFixed(3);
  return [
    'flite',
    '-voice',
    voice,
    '--setf',
    `duration_stretch=${stretch}`,
    '-t',
    text,
    '-o',
    '/out/line.wav',
  ];
}
