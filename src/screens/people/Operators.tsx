/** The list of operators in the Toolroom: added, renamed, removed, made instructors. */

import { useState } from 'preact/hooks';
import { peopleTexts } from '../../texts/index.ts';
import { FocusHeading } from '../frame/FocusHeading.tsx';
import { addressOf } from '../route.ts';
import { useSay } from '../use-say.ts';
import type { Operator, WorldProps } from '../world.ts';
import { OperatorForm } from './OperatorForm.tsx';

export function Operators({ world }: WorldProps) {
  const say = useSay(peopleTexts);
  const [message, setMessage] = useState('');
  const operators = world.operators.all();
  return (
    <section class="stack" aria-labelledby="operators-title">
      <FocusHeading id="operators-title">{say('title')}</FocusHeading>
      <p class="soft">{say('about')}</p>
      {operators.length === 0 && <p>{say('none')}</p>}
      <ul class="operators">
        {operators.map((operator) => (
          <OneOperator
            key={operator.id}
            world={world}
            operator={operator}
            onMessage={(text) => setMessage(text)}
          />
        ))}
      </ul>
      <AddOperator world={world} onMessage={setMessage} />
      <p role="status">{message}</p>
    </section>
  );
}

interface OneOperatorProps extends WorldProps {
  readonly operator: Operator;
  readonly onMessage: (message: string) => void;
}

function OneOperator({ world, operator, onMessage }: OneOperatorProps) {
  const say = useSay(peopleTexts);
  const [open, setOpen] = useState(false);
  const { id, name, instructor } = operator;
  return (
    <li class="card stack">
      <h3>
        {name}
        {instructor && <span class="badge">{say('instructor')}</span>}
      </h3>
      <p class="row">
        <a class="button tall" href={addressOf({ at: 'operator', operator: id })}>
          {say('sheet')}
          <span class="unseen"> {name}</span>
        </a>
        <button
          type="button"
          class="button tall"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {say('change', { name })}
        </button>
      </p>
      {open && <OperatorForm world={world} operator={operator} onMessage={onMessage} />}
    </li>
  );
}

interface AddOperatorProps extends WorldProps {
  readonly onMessage: (message: string) => void;
}

function AddOperator({ world, onMessage }: AddOperatorProps) {
  const say = useSay(peopleTexts);
  const [name, setName] = useState('');
  async function add(event: Event): Promise<void> {
    event.preventDefault();
    const why = await world.operators.add(name);
    onMessage(why ?? say('added', { name: name.trim() }));
    if (why === null) setName('');
  }
  return (
    <form class="row one-line" onSubmit={(event) => void add(event)}>
      <div class="field">
        <label for="operator-new">{say('name')}</label>
        <input
          id="operator-new"
          value={name}
          maxLength={60}
          autocomplete="off"
          onInput={(event) => setName(event.currentTarget.value)}
        />
      </div>
      <button type="submit" class="button tall">
        {say('add')}
      </button>
    </form>
  );
}
