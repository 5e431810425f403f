import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { listKeptFiles } from './src/offline/build/index.ts';
import { voiceEngine } from './src/voice/build/index.ts';

const inRepository = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const repository = inRepository('.');

const alone = ['voice', 'ear-set-up'].map((name) => `tests/browser/${name}.test.ts`);
const inChromium = {
  root: repository,
  globalSetup: 'tests/browser/build-first.ts',
  environment: 'node',
  testTimeout: 120_000,
  hookTimeout: 180_000,
};

export default defineConfig({
  root: inRepository('src'),
  base: './',
  cacheDir: inRepository('node_modules/.vite'),
  plugins: [voiceEngine(), listKeptFiles()],
  worker: { format: 'es' },
  build: {
    outDir: inRepository('dist'),
    emptyOutDir: true,
    target: 'es2022',
    rolldownOptions: {
      input: {
        index: inRepository('src/index.html'),
        sw: inRepository('src/offline/worker/sw.ts'),
      },
      output: {
        // A service worker must keep its name, and stand where the page stands.
        entryFileNames: ({ name }) => (name === 'sw' ? 'sw.js' : 'assets/[name]-[hash].js'),
      },
    },
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    // One core stays free by default, and most machines that test this have two.
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: 'unit',
          root: repository,
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**'],
          environment: 'node',
          testTimeout: 20_000,
          // The rooms keep no state between calls but what is worked out once: files of a worker may share it.
          isolate: false,
        },
      },
      {
        test: {
          name: 'browser',
          ...inChromium,
          include: ['tests/browser/**/*.test.ts'],
          exclude: ['tests/browser/sound-*.test.ts', ...alone],
          sequence: { groupOrder: 1 },
        },
      },
      {
        // These hear in real time, which a busy machine is late for: one after another.
        test: {
          name: 'browser-alone',
          ...inChromium,
          include: alone,
          fileParallelism: false,
          sequence: { groupOrder: 2 },
        },
      },
      {
        // Sound takes the time it takes, and a busy machine mishears: run by itself.
        test: {
          name: 'sound',
          root: repository,
          include: ['tests/browser/sound-*.test.ts'],
          globalSetup: ['tests/browser/build-first.ts'],
          environment: 'node',
          testTimeout: 300_000,
          hookTimeout: 180_000,
        },
      },
    ],
  },
});
