import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const repository = fileURLToPath(new URL('.', import.meta.url));

export default defineConfig({
  root: 'src',
  base: './',
  build: { outDir: '../dist', emptyOutDir: true, target: 'es2022' },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          root: repository,
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: ['tests/browser/**'],
          environment: 'node',
          testTimeout: 20_000,
        },
      },
      {
        test: {
          name: 'browser',
          root: repository,
          include: ['tests/browser/**/*.test.ts'],
          environment: 'node',
          testTimeout: 120_000,
          hookTimeout: 180_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
