/** One word after the other is asked for, said, and learnt; then any of them can be tried. */

import { useEffect, useRef, useState } from 'preact/hooks';
import { earTexts } from '../../texts/index.ts';
import { useSay } from '../use-say.ts';
import type { OpenEarBench, WorldProps } from '../world.ts';
import { type Lesson, learnt, nextWord, wordAfter } from './lesson.ts';

interface VoiceLessonProps extends WorldProps {
  readonly bench: OpenEarBench;
  /** What the ear heard last while words were tried; empty when it was not understood. */
  readonly heard: string | null;
}

const reasons = {
  'too-quiet': 'tooQuiet',
  'too-short': 'tooShort',
  'too-long': 'tooLong',
  unlike: 'unlike',
  nothing: 'nothing',
} as const;

export function VoiceLesson({ world, bench, heard }: VoiceLessonProps) {
  const say = useSay(earTexts);
  const [flow, setFlow] = useState(world.shelf[0]?.id ?? '');
  const words = useWords(world, flow);
  const lesson = useLesson(bench, words);
  const person = world.earBench.person();
  const done = learnt({ words, known: lesson.known });
  return (
    <section class="card stack" aria-labelledby="voice-title">
      <h2 id="voice-title">{say('voiceTitle')}</h2>
      <p>{say('voiceAbout')}</p>
      <p>{person === '' ? say('nobody') : say('whose', { name: person })}</p>
      <label class="field">
        <span>{say('flow')}</span>
        <select value={flow} onChange={(event) => setFlow(event.currentTarget.value)}>
          {world.shelf.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <p class="row">
        <button type="button" class="button ear-button" onClick={lesson.toggle}>
          {say(lesson.word === null ? 'begin' : 'pause')}
        </button>
        {lesson.word !== null && (
          <button type="button" class="button ear-button" onClick={lesson.skip}>
            {say('skip')}
          </button>
        )}
      </p>
      <p class="lesson-word" aria-live="assertive">
        {lesson.word !== null && say('sayNow', { word: lesson.word })}
      </p>
      <p role="status">
        {lesson.told === '' ? '' : `${say(lesson.told)} `}
        {say('takes', { done, all: words.length })}
      </p>
      {lesson.word === null && (
        <>
          <h3>{say('tryTitle')}</h3>
          <p>{say('tryAbout')}</p>
          <p role="status" class="lesson-heard">
            {heard === null ? '' : heard === '' ? say('unclear') : say('heard', { word: heard })}
          </p>
        </>
      )}
    </section>
  );
}

function useWords(world: WorldProps['world'], flow: string): readonly string[] {
  const [words, setWords] = useState<readonly string[]>([]);
  useEffect(() => {
    let wanted = true;
    void world.earBench.words(flow).then((found) => wanted && setWords(found));
    return () => {
      wanted = false;
    };
  }, [world, flow]);
  return words;
}

type Told = '' | 'kept' | 'allLearnt' | (typeof reasons)[keyof typeof reasons];

/** Asks for one word at a time; whoever pauses or leaves is asked no more. */
function useLesson(bench: OpenEarBench, words: readonly string[]) {
  const [word, setWord] = useState<string | null>(null);
  const [told, setTold] = useState<Told>('');
  const turn = useRef(0);
  const known = bench.known();
  useEffect(() => () => void turn.current++, []);
  useEffect(() => {
    if (word === null && words.length > 0) bench.tryWords(words);
  }, [bench, word, words]);

  const ask = async (asked: string | null): Promise<void> => {
    const mine = ++turn.current;
    bench.stopEnrolling();
    setWord(asked);
    if (asked === null) return;
    const take = await bench.enrol(asked);
    if (mine !== turn.current) return;
    const lesson: Lesson = { words, known: bench.known() };
    const next = take.kind === 'kept' ? wordAfter(lesson, asked) : asked;
    setTold(take.kind === 'again' ? reasons[take.reason] : next === null ? 'allLearnt' : 'kept');
    await ask(next);
  };
  const start = (from: string | null) => {
    setTold('');
    void ask(nextWord({ words, known }, from));
  };
  return {
    word,
    told,
    known,
    toggle: () => (word === null ? start(null) : void ask(null)),
    skip: () => start(word),
  };
}
