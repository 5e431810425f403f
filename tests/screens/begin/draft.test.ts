import { describe, expect, it } from 'vitest';
import { defaultInputs } from '../../../src/flow/index.ts';
import {
  cardAmong,
  type Draft,
  proofChoice,
  readDraft,
  stillFaulty,
  textIn,
} from '../../../src/screens/begin/draft.ts';
import { englishLanguage } from '../../../src/texts/index.ts';
import { cardNamed, hingePin } from '../../flow/shipped.ts';

const flow = hingePin();
const draft: Draft = {
  operator: 'Ida',
  cardId: 'metric-lathe',
  proposed: defaultInputs(flow),
  typed: {},
};
const [bar] = flow.file.inputs.filter(({ id }) => id === 'barDiameter');

describe('a draft', () => {
  it('keeps numbers that nobody touched exact, also where they are shown in inches', () => {
    expect(bar && textIn(draft, bar, 'inch', englishLanguage)).toBe('0.9843');
    expect(readDraft(flow, draft, 'inch')).toEqual({ ok: true, inputs: defaultInputs(flow) });
  });

  it('takes what was typed over what was proposed', () => {
    const read = readDraft(flow, { ...draft, typed: { barDiameter: '1 in' } }, 'metric');
    expect(read.ok && read.inputs.barDiameter).toBeCloseTo(25.4, 9);
  });

  it('is proved as it is to begin: with a release where one is asked for', () => {
    expect(proofChoice(flow, draft, 'metric')).not.toHaveProperty('releaseFirst');
    const released = proofChoice(flow, { ...draft, releaseFirst: true }, 'metric');
    expect(released).toMatchObject({ releaseFirst: true });
  });

  it('takes back what it told as soon as that is mended, and tells nothing new before it is asked', () => {
    const told = { operator: 'Write who is making it.', 'job 0': 'The bar is too thin.' };
    expect(stillFaulty(told, flow, draft, 'metric')).toEqual({});
    const unnamed = { ...draft, operator: ' ', typed: { barDiameter: 'thick' } };
    expect(stillFaulty(told, flow, unnamed, 'metric')).toEqual({ operator: told.operator });
  });

  it('names every fault at once, by its field', () => {
    const read = readDraft(
      flow,
      { ...draft, operator: ' ', typed: { barDiameter: '400', holeDepth: 'deep' } },
      'metric',
    );
    expect(read.ok ? [] : Object.keys(read.faults)).toEqual([
      'operator',
      'barDiameter',
      'holeDepth',
    ]);
  });
});

describe('the card to begin with', () => {
  const [inch, metric] = [cardNamed('inch-lathe'), cardNamed('metric-lathe')];

  it('is the one that was used last, where it is still there', () => {
    expect(cardAmong([inch, metric], [undefined, 'inch-lathe'], flow)).toBe(inch);
    expect(cardAmong([inch, metric], ['gone', 'inch-lathe'], flow)).toBe(inch);
  });

  it('has else the dials that the flow is written in', () => {
    expect(cardAmong([inch, metric], [''], flow)).toBe(metric);
    expect(cardAmong([inch], [''], flow)).toBe(inch);
    expect(cardAmong([], [''], flow)).toBeUndefined();
  });
});
