/** A kept run, gone through word by word: what was heard, what it was taken for, and where the run stood after it. */

import { useMemo, useState } from 'preact/hooks';
import { type KeptRun, type RunEntry, type RunState, replayRun } from '../../bench/index.ts';
import { type Job, viewOf } from '../../flow/index.ts';
import { logbookTexts, recordTexts } from '../../texts/index.ts';
import { PieceDrawing } from '../drawing/PieceDrawing.tsx';
import { useLanguage, useSay } from '../use-say.ts';
import { howSure } from './Entries.tsx';
import { eventText } from './event-words.ts';
import { pieceOfRun } from './sheet-of.ts';
import { FROM, OUTCOMES, sizeText } from './verdict-words.ts';
import { clockText } from './when.ts';

interface ReplayProps {
  readonly run: KeptRun;
  /** The job as it was begun, before any change of its numbers. */
  readonly job: Job;
}

export function Replay({ run, job }: ReplayProps) {
  const say = useSay(recordTexts);
  const of = run.entries.length;
  const [index, setIndex] = useState(of === 0 ? 0 : 1);
  const state = useMemo(() => stateAfter(run, job, index), [run, job, index]);
  const entry = run.entries[index - 1];
  const placeText = index === 0 ? say('before') : say('place', { index, of });
  const to = (place: number) => setIndex(Math.max(0, Math.min(of, place)));
  return (
    <section class="stack replay no-print" aria-labelledby="replay-title">
      <h2 id="replay-title">{say('replay')}</h2>
      <p class="soft">{say('replayAbout')}</p>
      <div class="field">
        <output for="replay-place" class="slider-label" aria-live="polite">
          {placeText}
        </output>
        <input
          id="replay-place"
          type="range"
          aria-labelledby="replay-title"
          aria-valuetext={placeText}
          min={0}
          max={of}
          step={1}
          value={index}
          onInput={(event) => to(Number(event.currentTarget.value))}
        />
      </div>
      <div class="row">
        <Move name={say('first')} off={index === 0} onMove={() => to(0)} />
        <Move name={say('back')} off={index === 0} onMove={() => to(index - 1)} />
        <Move name={say('forward')} off={index === of} onMove={() => to(index + 1)} />
        <Move name={say('last')} off={index === of} onMove={() => to(of)} />
      </div>
      <div class="replay-now card">
        {entry && <Word entry={entry} job={job} state={state} run={run} />}
        {state && <Stood state={state} />}
      </div>
    </section>
  );
}

interface MoveProps {
  readonly name: string;
  readonly off: boolean;
  readonly onMove: () => void;
}

/** Stays in the tab order when it leads nowhere, so that the focus is never lost. */
function Move({ name, off, onMove }: MoveProps) {
  return (
    <button type="button" class="button tall" aria-disabled={off} onClick={onMove}>
      {name}
    </button>
  );
}

interface WordProps {
  readonly entry: RunEntry;
  readonly job: Job;
  readonly state: RunState | null;
  readonly run: KeptRun;
}

function Word({ entry, job, state, run }: WordProps) {
  const say = useSay(recordTexts);
  const word = useSay(logbookTexts);
  const language = useLanguage();
  const { heard, outcome, said, at, step } = entry;
  const reading = state?.readings.find((one) => one.at === at && one.step === step);
  const taken = reading ?? run.readings.find((one) => one.at === at && one.step === step);
  const rows: readonly (readonly [string, string])[] = [
    [say('step'), job.flow.steps.get(step)?.title ?? step],
    [say('heard'), word('quoted', { word: heard.text })],
    [say('from_'), `${word(FROM[heard.from])}, ${clockText(at, language)}`],
    [say('sure'), say('sureOf', { percent: howSure(heard) })],
    [say('understood'), eventText(entry, job, language)],
    [say('did'), word(OUTCOMES[outcome])],
    ...(taken ? [[say('reading'), sizeText(taken.value, taken.unit, language)] as const] : []),
    ...(said ? [[say('answered'), said] as const] : []),
  ];
  return (
    <dl class="facts replay-word" data-outcome={outcome}>
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

function Stood({ state }: { readonly state: RunState }) {
  const say = useSay(recordTexts);
  const { step, lead, gate } = viewOf(state.job, state.snapshot);
  const piece = pieceOfRun(state);
  const believed = gate.filter(({ met }) => met).map(({ label }) => label);
  return (
    <div class="stack">
      <dl class="facts">
        <div>
          <dt>{say('stood')}</dt>
          <dd>{step.title}</dd>
        </div>
        <div>
          <dt>{say('shown')}</dt>
          <dd>{lead.shown}</dd>
        </div>
        {believed.length > 0 && (
          <div>
            <dt>{say('facts')}</dt>
            <dd>{believed.join(', ')}</dd>
          </div>
        )}
      </dl>
      {piece && (
        <div class="replay-piece">
          <PieceDrawing {...piece} width={480} textSize={14} title={step.title} />
        </div>
      )}
    </div>
  );
}

function stateAfter(run: KeptRun, job: Job, index: number): RunState | null {
  const replayed = replayRun(job, run.head, run.entries.slice(0, index));
  return replayed.ok ? replayed.state : null;
}
