/** The title block of a kept run's drawing. Pure. */

import type { RunHead, RunState } from '../../bench/index.ts';
import { positionOf } from '../../flow/index.ts';
import { type Language, logbookTexts, optionText, sayIn } from '../../texts/index.ts';
import type { SheetHead } from '../drawing/sheet.ts';
import { type PieceNow, pieceNow } from '../piece/piece-now.ts';
import { whenText } from './when.ts';

export function pieceOfRun({ job, snapshot }: RunState): PieceNow | null {
  return pieceNow(job, positionOf(snapshot).step, snapshot.context.readings);
}

export function sheetHeadOf({ job }: RunState, head: RunHead, language: Language): SheetHead {
  const say = sayIn(language, logbookTexts);
  const flow = say('flowRevision', { flow: head.flowId, revision: head.flowVersion });
  const material = job.numbers.inputs.material;
  return {
    title: head.flowTitle,
    fields: [
      { label: say('madeBy'), value: head.operator },
      { label: say('date'), value: whenText(head.endedAt ?? head.startedAt, language) },
      { label: say('flow'), value: flow },
      { label: say('machine'), value: job.card.title },
      ...(typeof material === 'string'
        ? [{ label: say('material'), value: optionText(language, material) }]
        : []),
    ],
    note: say('notToScale'),
  };
}
