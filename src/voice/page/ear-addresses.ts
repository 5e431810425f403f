/** Where the offline ear's parts lie. Loaded only when that ear is used; the bundler fills it in. */
/// <reference path="./engine-files.d.ts" />
import wasm from 'followrest-engine/engine.wasm?url';
import dictionary from 'followrest-model/cmudict-en-us.dict?url';
import params from 'followrest-model/en-us/feat.params?url';
import mdef from 'followrest-model/en-us/mdef?url';
import means from 'followrest-model/en-us/means?url';
import noisedict from 'followrest-model/en-us/noisedict?url';
import sendump from 'followrest-model/en-us/sendump?url';
import transitions from 'followrest-model/en-us/transition_matrices?url';
import variances from 'followrest-model/en-us/variances?url';
import type { EarAddresses } from '../shared/messages.ts';

const relative: EarAddresses = {
  wasm,
  dictionary,
  model: {
    'feat.params': params,
    mdef,
    means,
    noisedict,
    sendump,
    transition_matrices: transitions,
    variances,
  },
};

/** Whole addresses: the worker lies in another folder than the page. */
export function earAddresses(): EarAddresses {
  const whole = (address: string) => new URL(address, document.baseURI).href;
  return {
    wasm: whole(relative.wasm),
    dictionary: whole(relative.dictionary),
    model: Object.fromEntries(
      Object.entries(relative.model).map(([name, address]) => [name, whole(address)]),
    ),
  };
}
