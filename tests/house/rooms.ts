/** The table of rooms: who may look at whom, and the sentence for whoever looks elsewhere. */

/** What of another room may be seen: everything its door gives, its types, or the types of ports.ts. */
export type View = 'door' | 'types' | 'ports';

export interface Room {
  /** Folder under src/. */
  readonly name: string;
  readonly sees: Readonly<Record<string, View>>;
  readonly npm: readonly string[];
  readonly node: boolean;
  /** Realms it may start with `new Worker(new URL(…))` or add as a worklet. */
  readonly starts: readonly string[];
  /** Where a line belongs that does not fit here. */
  readonly otherwise: string;
}

const ANY = ['*'];

/** One row a room, as in DEVELOPERS.md. Deviations from the first design say why. */
export const ROOMS: readonly Room[] = [
  room('texts', {
    npm: ['intl-messageformat'],
    otherwise:
      'texts/ holds words and their forms: what they are said for belongs in the room that says them.',
  }),
  room('trade', {
    otherwise:
      'trade/ is numbers in, numbers out: what speaks belongs in words/, what reads files in flow/.',
  }),
  room('words', {
    otherwise: 'words/ is plain language: a formula belongs in trade/, an engine in voice/.',
    // The matching of what was heard to what may be said stands here, not in voice/shared/: bench/
    // and the command line need it where there is no voice.
  }),
  room('flow', {
    sees: { trade: 'door', words: 'door' },
    // momoa reads JSON with line and column, which the platform's own reader does not give.
    npm: ['zod', 'xstate', '@humanwhocodes/momoa'],
    otherwise:
      'flow/ only reads and compiles: what acts on a step belongs in bench/, what walks it in proof/.',
  }),
  room('proof', {
    sees: { flow: 'door', trade: 'door' },
    npm: ['xstate'],
    otherwise: 'proof/ judges compiled flows: what shows a verdict belongs in screens/ or cli/.',
  }),
  room('bench', {
    sees: { flow: 'door', trade: 'door', words: 'door' },
    npm: ['xstate'],
    otherwise:
      'bench/ touches no device: name the need in bench/ports.ts and meet it in voice/, logbook/ or screens/.',
  }),
  room('voice/shared', {
    sees: { bench: 'ports', words: 'door' },
    otherwise:
      'voice/shared/ holds messages between realms: matching words belongs in words/, what they do in bench/.',
  }),
  room('voice/page', {
    sees: { bench: 'ports', words: 'door', 'voice/shared': 'door' },
    starts: ['voice/worker', 'voice/worklet'],
    // Not packages but folders that voice/build names for the bundler: made or taken from packages.
    npm: ['followrest-engine', 'followrest-model', 'followrest-flite'],
    otherwise:
      'voice/page/ hears and speaks: what a word does is decided in bench/, what is seen in screens/.',
  }),
  room('voice/worker', {
    sees: { bench: 'ports', words: 'door', 'voice/shared': 'door' },
    npm: ['followrest-engine', '@bjorn3/browser_wasi_shim'],
    otherwise:
      'voice/worker/ recognises sound: what a word does is decided in bench/, the microphone is in voice/page/.',
  }),
  room('voice/worklet', {
    sees: { 'voice/shared': 'door' },
    otherwise: 'voice/worklet/ copies samples and nothing else: thinking belongs in voice/worker/.',
  }),
  room('voice/build', {
    sees: { 'voice/shared': 'door' },
    npm: ['vite', 'binaryen'],
    node: true,
    otherwise: 'voice/build/ prepares engine files: it runs in Node, beside Vite.',
  }),
  room('verdict/shared', {
    sees: { proof: 'types' },
    otherwise:
      'verdict/shared/ holds messages: what proves belongs in proof/, what asks in verdict/page/.',
  }),
  room('verdict/page', {
    sees: { bench: 'ports', proof: 'types', 'verdict/shared': 'door' },
    starts: ['verdict/worker'],
    otherwise:
      'verdict/page/ asks for proofs and waits: whether a job may begin is decided in front/, what is shown in screens/.',
  }),
  room('verdict/worker', {
    sees: { proof: 'door', 'verdict/shared': 'door' },
    otherwise: 'verdict/worker/ is a shell round proof/: what judges a flow belongs there.',
  }),
  room('logbook', {
    sees: { bench: 'ports', flow: 'types' },
    npm: ['idb', 'zod'],
    otherwise: 'logbook/ keeps rows: what they mean belongs in bench/, how they look in screens/.',
  }),
  room('screens', {
    sees: { bench: 'door', flow: 'door', trade: 'door', proof: 'door' },
    npm: ['preact', '@preact/signals'],
    otherwise:
      'screens/ shows and asks: voices and the logbook reach it through bench/ports.ts, handed in by main.tsx.',
  }),
  room('offline/shared', {
    otherwise: 'offline/shared/ is the list of kept files: it needs nobody else.',
  }),
  room('offline/page', {
    sees: { 'offline/shared': 'door' },
    starts: ['offline/worker'],
    otherwise: 'offline/page/ talks to the service worker: main.tsx tells it about runs.',
  }),
  room('offline/worker', {
    sees: { 'offline/shared': 'door' },
    otherwise: 'offline/worker/ caches files by name: it knows nothing of the program in them.',
  }),
  room('offline/build', {
    sees: { 'offline/shared': 'door' },
    npm: ['vite'],
    node: true,
    otherwise: 'offline/build/ lists what was built: it runs in Node, beside Vite.',
  }),
  room('front', {
    // The hall behind main.tsx: it makes the real ear, mouth, ledger and clock and joins them.
    sees: {
      ...{ trade: 'door', words: 'door', flow: 'door', proof: 'door', bench: 'door' },
      ...{ 'voice/shared': 'door', 'voice/page': 'door', logbook: 'door', screens: 'door' },
      ...{ 'offline/page': 'door', 'verdict/page': 'door' },
    },
    npm: ['zod', 'preact'],
    otherwise: 'front/ only joins the rooms: what a room could do by itself belongs in that room.',
  }),
  room('cli', {
    sees: {
      ...{ trade: 'door', words: 'door', flow: 'door', proof: 'door', bench: 'door' },
      ...{
        'voice/shared': 'door',
        'voice/page': 'door',
        'voice/worker': 'door',
        'voice/build': 'door',
      },
      logbook: 'door',
    },
    npm: ANY,
    node: true,
    otherwise:
      'cli/ runs in Node: what is seen belongs in screens/, the service worker in offline/.',
  }),
];

/** Files that are entered from outside; every room has index.ts, these have more. */
export const MORE_DOORS: Readonly<Record<string, readonly string[]>> = {
  bench: ['ports.ts'],
  // The shape of the file, for the schema that is published: no store stands behind it.
  logbook: ['file-shape.ts'],
  // Types only: what the screens need from the hall.
  screens: ['world.ts'],
  // Languages that are fetched when they are chosen.
  texts: ['de/index.ts'],
};

/** The realms of one family look into their shared folder file by file: it is half theirs. */
export const SHARED = ['voice/shared', 'offline/shared', 'verdict/shared'];

/**
 * Only these may load files outside src/: they hand the shipped flows down. Rooms that run in Node
 * may name a folder there.
 */
export const MAY_LEAVE_SRC = ['cli', 'front'];

function room(name: string, row: Partial<Room> & Pick<Room, 'otherwise'>): Room {
  // Whoever has something to say finds the words in texts/.
  const sees = { ...(name === 'texts' ? {} : { texts: 'door' as const }), ...row.sees };
  return { name, npm: [], node: false, starts: [], ...row, sees };
}
