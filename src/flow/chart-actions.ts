/** XState's setup for flows: guards and actions by name. They only read and replace context; nothing reaches the world. */

import { assign, setup } from 'xstate';
import { answerGuards, factGuards } from './chart-guards.ts';
import type { ChartWorld } from './chart-world.ts';
import { courseChanges, readingChanges } from './course-changes.ts';
import type { FlowContext, FlowEvent } from './events.ts';
import { doubts, factChanges } from './fact-changes.ts';

/** A change as an action that XState applies while it works the transition out. */
function change<Params>(
  make: (context: FlowContext, event: FlowEvent, params: Params) => Partial<FlowContext>,
) {
  return assign<FlowContext, FlowEvent, Params, FlowEvent, never>(({ context, event }, params) =>
    make(context, event, params),
  );
}

export function chartSetup(world: ChartWorld) {
  const facts = factChanges(world);
  const readings = readingChanges(world);
  const course = courseChanges(world);
  const doubt = doubts(world);
  return setup({
    types: { context: {} as FlowContext, events: {} as FlowEvent },
    guards: { ...factGuards(world), ...answerGuards(world) },
    actions: {
      setFact: change(facts.setFact),
      change: change(facts.change),
      forget: change(facts.forget),
      forgetOtherSpeed: change(facts.forgetOtherSpeed),
      doubtPower: change(doubt.doubtPower),
      doubtMotion: change(doubt.doubtMotion),
      doubtStop: change(doubt.doubtStop),
      doubtAll: change(doubt.doubtAll),
      beginPasses: change(readings.beginPasses),
      takeReading: change(readings.takeReading),
      holdFor: change(course.holdFor),
      release: change(course.release),
      undo: change(course.undo),
    },
  });
}
