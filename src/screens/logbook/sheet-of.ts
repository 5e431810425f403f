/** The title block of a kept run's drawing. Pure. */

import type { RunHead, RunState } from '../../bench/index.ts';
import { positionOf } from '../../flow/index.ts';
import { optionText } from '../begin/input-text.ts';
import type { SheetHead } from '../drawing/sheet.ts';
import { type PieceNow, pieceNow } from '../piece/piece-now.ts';
import { whenText } from './when.ts';

export function pieceOfRun({ job, snapshot }: RunState): PieceNow | null {
  return pieceNow(job, positionOf(snapshot).step, snapshot.context.readings);
}

export function sheetHeadOf({ job }: RunState, head: RunHead): SheetHead {
  const material = job.numbers.inputs.material;
  return {
    title: head.flowTitle,
    fields: [
      { label: 'Made by', value: head.operator },
      { label: 'Date', value: whenText(head.endedAt ?? head.startedAt) },
      { label: 'Flow', value: `${head.flowId}, revision ${head.flowVersion}` },
      { label: 'Machine', value: job.card.title },
      ...(typeof material === 'string' ? [{ label: 'Material', value: optionText(material) }] : []),
    ],
    note: 'Not to scale, mm',
  };
}
