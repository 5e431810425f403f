/** The facts of the gate. Each keeps its place while the gate lasts, so that no second tap answers another one. */

import { useRef } from 'preact/hooks';
import type { GateLine } from '../../flow/index.ts';
import { dockTexts } from '../../texts/index.ts';
import { Icon } from '../frame/Icon.tsx';
import { useSay } from '../use-say.ts';
import { type Say, SayButton } from './SayButton.tsx';

interface GateProps {
  /** What to do when a fact is not so; not while it cuts, where the word only tells what was done. */
  readonly remedies: boolean;
  readonly lines: readonly GateLine[];
  readonly keys: ReadonlyMap<string, string>;
  readonly say: Say;
}

/** Given a key of its own for each gate: the order is that of the moment in which it appeared, open ones first. */
export function Gate({ remedies, lines: now, keys, say }: GateProps) {
  const text = useSay(dockTexts);
  const order = useRef(openFirst(now));
  const lines = inOrder(now, order.current);
  if (lines.length === 0) return null;
  const open = lines.filter((line) => !line.met).length;
  return (
    <section class="gate" aria-label={text('gate')} data-many={lines.length > 4 ? '' : undefined}>
      {lines.length > 1 && (
        <p class="gate-count" aria-live="polite">
          {open === 0 ? text('allAnswered') : text('openOf', { open, of: lines.length })}
        </p>
      )}
      <ul class="gate-lines">
        {lines.map((line) => (
          <li key={line.fact}>
            <GateRow line={line} shortcut={keys.get(line.fact)} say={say} />
          </li>
        ))}
      </ul>
      {remedies && <Remedy lines={now} />}
    </section>
  );
}

function openFirst(lines: readonly GateLine[]): readonly string[] {
  const of = (met: boolean) => lines.filter((line) => line.met === met);
  return [...of(false), ...of(true)].map((line) => line.fact);
}

/** Facts that came later stand last. */
function inOrder(lines: readonly GateLine[], order: readonly string[]): readonly GateLine[] {
  const place = ({ fact }: GateLine) => (order.includes(fact) ? order.indexOf(fact) : order.length);
  return [...lines].sort((a, b) => place(a) - place(b));
}

interface GateRowProps {
  readonly line: GateLine;
  readonly shortcut: string | undefined;
  readonly say: Say;
}

function GateRow({ line, shortcut, say }: GateRowProps) {
  const text = useSay(dockTexts);
  const { label, met, ask } = line;
  if (!met && ask) {
    return (
      <SayButton word={ask.word} say={say} shortcut={shortcut} look="gate-row open" gate>
        <span class="gate-label">{label}</span>
        <span class="unseen">{text('openSay')}</span>
        <span class="gate-word">{text('quoted', { word: ask.word })}</span>
      </SayButton>
    );
  }
  return (
    <div class={met ? 'gate-row met' : 'gate-row later'}>
      {met && <Icon name="tick" />}
      <span class="gate-label">{label}</span>
      <span class="gate-state">{text(met ? 'answered' : 'isOpen')}</span>
    </div>
  );
}

/** What to do about the first open fact. */
function Remedy({ lines }: { readonly lines: readonly GateLine[] }) {
  const text = useSay(dockTexts);
  const first = lines.find((line) => line.ask && !line.met);
  if (!first?.ask) return null;
  return (
    <p class="remedy">
      <strong>{text('ifNot')}</strong> {first.ask.remedy}
    </p>
  );
}
