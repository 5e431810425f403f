/** Sets up the ear of the page for this microphone, this room and this person, before work. */

import { useEffect, useRef, useState } from 'preact/hooks';
import type { EarReport } from '../../bench/index.ts';
import { earTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { OpenEarBench, WorldProps } from '../world.ts';
import { KeptVoices } from './KeptVoices.tsx';
import { MicrophoneLevel } from './MicrophoneLevel.tsx';
import { RoomCheck } from './RoomCheck.tsx';
import { VoiceLesson } from './VoiceLesson.tsx';

export function EarSetUp({ world }: WorldProps) {
  const say = useSay(earTexts);
  const ear = useOpenEar(world);
  return (
    <>
      <h1>{say('title')}</h1>
      <p>{say('about')}</p>
      <p class="card">
        <strong>{say('safety')}</strong>
      </p>
      <p class="row">
        <button
          type="button"
          class="button main ear-button"
          onClick={ear.toggle}
          disabled={ear.opening}
        >
          {say(ear.bench ? 'close' : 'open')}
        </button>
      </p>
      <p role="status">{ear.opening ? say('opening') : ear.fault}</p>
      {ear.bench && (
        <>
          <MicrophoneLevel level={ear.level} noisy={ear.noisy} />
          <RoomCheck bench={ear.bench} />
          <VoiceLesson world={world} bench={ear.bench} heard={ear.heard} />
        </>
      )}
      <KeptVoices earBench={world.earBench} />
    </>
  );
}

type Level = Extract<EarReport, { kind: 'level' }>;

/** The microphone is open only while this screen is seen, and only after a tap. */
function useOpenEar({ earBench }: WorldProps['world']) {
  const [bench, setBench] = useState<OpenEarBench | null>(null);
  const [opening, setOpening] = useState(false);
  const [fault, setFault] = useState('');
  const [level, setLevel] = useState<Level | null>(null);
  const [noisy, setNoisy] = useState(false);
  const [heard, setHeard] = useState<string | null>(null);
  const last = useRef<OpenEarBench | null>(null);
  const gone = useRef(false);
  useEffect(
    () => () => {
      gone.current = true;
      void last.current?.close();
    },
    [],
  );
  const hear = (report: EarReport) => {
    if (report.kind === 'level') setLevel(report);
    if (report.kind === 'listening') setNoisy(false);
    if (report.kind === 'heard') setHeard(report.heard.text);
    if (report.kind === 'unclear') setHeard('');
    if (report.kind !== 'deaf') return;
    if (report.deafness.kind === 'noisy') setNoisy(true);
    else setFault(report.deafness.sentence);
  };
  const open = async () => {
    setOpening(true);
    setFault('');
    const opened = await earBench.open(hear);
    if (gone.current) return opened.ok ? opened.bench.close() : undefined;
    setOpening(false);
    last.current = opened.ok ? opened.bench : null;
    setBench(last.current);
    if (!opened.ok) setFault(opened.fault);
  };
  const close = async () => {
    setBench(null);
    setLevel(null);
    await last.current?.close();
    last.current = null;
  };
  const toggle = () => void (bench ? close() : open());
  return { bench, opening, fault, level, noisy, heard, toggle };
}
