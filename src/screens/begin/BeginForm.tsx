/** The form of a job: who, which machine, which numbers. Nothing typed is lost when something is wrong. */

import { useRef, useState } from 'preact/hooks';
import type { RunHead } from '../../bench/index.ts';
import { type Card, defaultInputs, type Flow } from '../../flow/index.ts';
import { beginTexts, proofTexts } from '../../texts/index.ts';
import { Cautions } from '../frame/Cautions.tsx';
import { Icon } from '../frame/Icon.tsx';
import { NotYet } from '../frame/NotYet.tsx';
import { addressOf } from '../route.ts';
import { useSay } from '../use-say.ts';
import type { WorldProps } from '../world.ts';
import { cardAmong, type Draft, proofChoice, readDraft, stillFaulty } from './draft.ts';
import { InputField } from './InputField.tsx';
import { OperatorField } from './OperatorField.tsx';
import { PaceField } from './PaceField.tsx';
import { ProofNote } from './ProofNote.tsx';
import { paceProposed } from './pace-proposed.ts';
import { proofLine } from './proof-line.ts';
import { ReleaseFirstField } from './ReleaseFirstField.tsx';
import { useProof } from './use-proof.ts';
import { WorkedOut } from './WorkedOut.tsx';

interface BeginFormProps extends WorldProps {
  readonly flow: Flow;
  readonly cards: readonly Card[];
  readonly past: RunHead | null;
  /** The run whose piece is made once more, as the next of its batch. */
  readonly batchOf: string | undefined;
  /** Heads in the Logbook, newest first. */
  readonly runs: readonly RunHead[];
  readonly about: string;
}

export function BeginForm(props: BeginFormProps) {
  const { flow, cards, about } = props;
  const form = useBegin(props);
  const { draft, faults } = form;
  const proof = useProof(props.world, proofChoice(flow, draft, form.units));
  const say = useSay(beginTexts);
  const { mayBegin } = proofLine(proof.state, useSay(proofTexts));
  return (
    <form class="begin" noValidate onSubmit={form.begin}>
      <div class="stack">
        <h1>{flow.file.title}</h1>
        <p class="soft">{about}</p>
      </div>
      <NotYet reasons={Object.values(faults)} heading="h2" />
      <div class="begin-grid">
        <OperatorField
          operators={props.world.operators.all()}
          chosen={draft.operator}
          fault={faults.operator}
          onChoose={(operator) => form.change({ operator })}
        />
        <CardField
          cards={cards}
          chosen={draft.cardId}
          onChoose={(cardId) => form.change({ cardId })}
        />
        <PaceField chosen={form.pace} onChoose={(pace) => form.change({ pace })} />
      </div>
      <PieceNumbers flow={flow} form={form} />
      <WorkedOut flow={flow} card={cards.find(({ id }) => id === draft.cardId)} draft={draft} />
      <ProofNote state={proof.state} onStop={proof.stop} onAgain={proof.again} />
      <ReleaseFirstField
        operators={props.world.operators.all()}
        wanted={draft.releaseFirst === true}
        onWant={(releaseFirst) => form.change({ releaseFirst })}
      />
      <Cautions lines={flow.kind.cautions} />
      <button
        type="submit"
        class="button main tall"
        disabled={form.busy || !mayBegin || cards.length === 0}
      >
        {say('beginJob')}
        <Icon name="next" />
      </button>
    </form>
  );
}

interface PieceNumbersProps {
  readonly flow: Flow;
  readonly form: ReturnType<typeof useBegin>;
}

function PieceNumbers({ flow, form }: PieceNumbersProps) {
  const say = useSay(beginTexts);
  const { draft, faults, units } = form;
  return (
    <fieldset class="stack">
      <legend>
        <h2>{say('numbers')}</h2>
      </legend>
      <p class="hint">{say('numbersHint')}</p>
      <div class="begin-grid">
        {flow.file.inputs.map((input) => (
          <InputField
            key={input.id}
            input={input}
            units={units}
            draft={draft}
            fault={faults[input.id]}
            onText={(text) => form.change({ typed: { ...draft.typed, [input.id]: text } })}
          />
        ))}
      </div>
    </fieldset>
  );
}

/** What was typed, what is wrong with it, and the way to begin. */
function useBegin({ world, flow, cards, past, runs, batchOf }: BeginFormProps) {
  const settings = world.settings();
  const [draft, setDraft] = useState<Draft>(() => ({
    operator: past?.operator ?? settings.operator,
    cardId: cardAmong(cards, [past?.cardId, settings.cardId], flow)?.id ?? '',
    proposed: { ...defaultInputs(flow), ...past?.inputs },
    typed: {},
  }));
  const [faults, setFaults] = useState<Readonly<Record<string, string>>>({});
  const [busy, setBusy] = useState(false);
  const going = useRef(false);
  const unitsOf = ({ cardId }: Draft) => cards.find(({ id }) => id === cardId)?.units ?? 'metric';
  const units = unitsOf(draft);
  const pace = draft.pace ?? paceProposed(runs, draft.operator, flow.file.id);

  async function begin(event: Event): Promise<void> {
    event.preventDefault();
    if (going.current) return;
    const read = readDraft(flow, draft, units);
    setFaults(read.ok ? {} : read.faults);
    if (!read.ok) return;
    going.current = true;
    setBusy(true);
    const operator = draft.operator.trim();
    const { cardId } = draft;
    const begun = await world.begin({
      flowId: flow.file.id,
      cardId,
      operator,
      pace,
      inputs: read.inputs,
      ...(batchOf === undefined ? {} : { batchOf }),
      ...(draft.releaseFirst ? { releaseFirst: true } : {}),
    });
    going.current = false;
    setBusy(false);
    if (!begun.ok) {
      setFaults(Object.fromEntries(begun.faults.map((fault, index) => [`job ${index}`, fault])));
      return;
    }
    await world.change({ operator, cardId });
    location.hash = addressOf({ at: 'run', run: begun.runId });
  }

  return {
    draft,
    faults,
    busy,
    units,
    pace,
    begin,
    change(changes: Partial<Draft>) {
      const next = { ...draft, ...changes };
      setDraft(next);
      setFaults(stillFaulty(faults, flow, next, unitsOf(next)));
    },
  };
}

interface CardFieldProps {
  readonly cards: readonly Card[];
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}

function CardField({ cards, chosen, onChoose }: CardFieldProps) {
  const say = useSay(beginTexts);
  return (
    <div class="field">
      <label for="machine-card">{say('card')}</label>
      <select
        id="machine-card"
        value={chosen}
        aria-describedby="machine-card-hint"
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        {cards.map((card) => (
          <option key={card.id} value={card.id}>
            {card.title}
          </option>
        ))}
      </select>
      <p class="hint" id="machine-card-hint">
        {say(cards.length === 0 ? 'noCard' : 'cardHint')}
      </p>
    </div>
  );
}
