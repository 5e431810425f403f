/** What can be taken along from one run: the sheet, the readings, the whole record. */

import type { KeptRun, RunState } from '../../bench/index.ts';
import { logbookTexts } from '../../texts/index.ts';
import { drawingWords } from '../drawing/drawing-words.ts';
import { sheetSvg } from '../drawing/sheet.ts';
import { useLanguage, useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { fileName, giveFile } from './give-file.ts';
import { pieceOfRun, sheetHeadOf } from './sheet-of.ts';

interface ExportsProps extends WorldProps {
  readonly run: KeptRun;
  readonly state: RunState | null;
}

export function Exports({ world, run, state }: ExportsProps) {
  const say = useSay(logbookTexts);
  const language = useLanguage();
  const { head } = run;
  const day = new Date(head.startedAt).toISOString().slice(0, 10);
  const name = (ending: string) => fileName([head.flowId, day, head.operator], ending);
  const now = state && pieceOfRun(state);
  return (
    <section class="stack no-print" aria-labelledby="kept-exports">
      <h2 id="kept-exports">{say('takeAlong')}</h2>
      <div class="row">
        {state && now && (
          <button
            type="button"
            class="button"
            onClick={() =>
              giveFile(
                name('svg'),
                'image/svg+xml',
                sheetSvg(
                  now.piece,
                  now.state,
                  sheetHeadOf(state, head, language),
                  drawingWords(language),
                ),
              )
            }
          >
            {say('drawingSvg')}
          </button>
        )}
        <button
          type="button"
          class="button"
          onClick={() => giveFile(name('csv'), 'text/csv', world.readingsTable([run]))}
        >
          {say('readingsCsv')}
        </button>
        <button
          type="button"
          class="button"
          onClick={() => giveFile(name('json'), 'application/json', JSON.stringify(run, null, 2))}
        >
          {say('runJson')}
        </button>
      </div>
    </section>
  );
}
