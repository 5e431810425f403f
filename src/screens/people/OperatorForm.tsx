/** What can be changed about one operator: the name, being an instructor, being in the list. */

import { useState } from 'preact/hooks';
import { peopleTexts } from '../../texts/index.ts';
import { focusHeading } from '../frame/FocusHeading.tsx';
import { useSay } from '../use-say.ts';
import type { Operator, WorldProps } from '../world.ts';
import { SecretField } from './SecretField.tsx';

interface OperatorFormProps extends WorldProps {
  readonly operator: Operator;
  /** What came of it, in a sentence. */
  readonly onMessage: (message: string) => void;
}

export function OperatorForm(props: OperatorFormProps) {
  const say = useSay(peopleTexts);
  return (
    <section class="stack" aria-label={say('change', { name: props.operator.name })}>
      <Rename {...props} />
      <Instructor {...props} />
      <Remove {...props} />
    </section>
  );
}

function Rename({ world, operator, onMessage }: OperatorFormProps) {
  const say = useSay(peopleTexts);
  const [name, setName] = useState(operator.name);
  const id = `rename-${operator.id}`;
  async function rename(event: Event): Promise<void> {
    event.preventDefault();
    onMessage((await world.operators.rename(operator.id, name)) ?? say('renamed'));
  }
  return (
    <form class="row one-line" onSubmit={(event) => void rename(event)}>
      <div class="field">
        <label for={id}>{say('name')}</label>
        <input
          id={id}
          value={name}
          maxLength={60}
          autocomplete="off"
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </div>
      <button type="submit" class="button tall">
        {say('rename')}
      </button>
    </form>
  );
}

/** The first of a device agrees with nobody; each later one with an instructor. */
function Instructor({ world, operator, onMessage }: OperatorFormProps) {
  const say = useSay(peopleTexts);
  const instructors = world.operators.all().filter(({ instructor }) => instructor);
  const [phrase, setPhrase] = useState('');
  const [by, setBy] = useState('');
  const [byPhrase, setByPhrase] = useState('');
  const agrees = by || (instructors.find(({ id }) => id === operator.id) ?? instructors[0])?.id;
  async function make(event: Event): Promise<void> {
    event.preventDefault();
    const credential = agrees === undefined ? undefined : { id: agrees, passphrase: byPhrase };
    const why = await world.operators.makeInstructor(operator.id, phrase, credential);
    setPhrase('');
    setByPhrase('');
    onMessage(why ?? say('isSet'));
  }
  const title = say(operator.instructor ? 'changePassphrase' : 'makeInstructor');
  return (
    <form class="stack" aria-label={title} onSubmit={(event) => void make(event)}>
      <h4>{title}</h4>
      <p class="hint">{say('instructorAbout')}</p>
      <SecretField
        id={`phrase-${operator.id}`}
        label={say('newPassphrase')}
        value={phrase}
        fresh
        onInput={setPhrase}
      />
      {instructors.length > 0 && (
        <>
          <div class="field">
            <label for={`by-${operator.id}`}>{say('agreedBy')}</label>
            <select
              id={`by-${operator.id}`}
              value={agrees}
              onChange={(event) => setBy(event.currentTarget.value)}
            >
              {instructors.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </div>
          <SecretField
            id={`by-phrase-${operator.id}`}
            label={say('passphraseOf', { name: nameOf(instructors, agrees) })}
            value={byPhrase}
            onInput={setByPhrase}
          />
        </>
      )}
      <p>
        <button type="submit" class="button tall">
          {say('set')}
        </button>
      </p>
    </form>
  );
}

function nameOf(operators: readonly Operator[], wanted: string | undefined): string {
  return operators.find(({ id }) => id === wanted)?.name ?? '';
}

function Remove({ world, operator, onMessage }: OperatorFormProps) {
  const say = useSay(peopleTexts);
  const [phrase, setPhrase] = useState('');
  const { id, name, instructor } = operator;
  async function remove(event: Event): Promise<void> {
    event.preventDefault();
    const why = await world.operators.remove(id, instructor ? phrase : undefined);
    setPhrase('');
    onMessage(why ?? say('removed', { name }));
    if (why === null) focusHeading('operators-title');
  }
  return (
    <form class="row one-line" onSubmit={(event) => void remove(event)}>
      {instructor && (
        <SecretField
          id={`remove-${id}`}
          label={say('passphraseOf', { name })}
          value={phrase}
          onInput={setPhrase}
        />
      )}
      <button type="submit" class="button tall">
        {say('remove')}
        <span class="unseen"> {name}</span>
      </button>
    </form>
  );
}
