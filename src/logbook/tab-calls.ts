/** Tabs calling to each other: who leads this run? */

interface Call {
  readonly kind: 'who leads' | 'I lead';
  readonly runId: string;
  /** The calling tab, a random name. */
  readonly from: string;
}

export interface TabCalls {
  /** True when another tab answers in time that it leads the run. */
  someoneLeads(runId: string): Promise<boolean>;
}

/**
 * Answers calls for the runs that this tab leads. When two tabs ask at the same moment, the one
 * whose name comes first answers the other, so that not both take the run.
 */
export function openCalls(
  channel: BroadcastChannel | undefined,
  patience: number,
  leads: (runId: string) => boolean,
): TabCalls {
  const name = crypto.randomUUID();
  const asking = new Map<string, () => void>();
  const post = (kind: Call['kind'], runId: string) =>
    channel?.postMessage({ kind, runId, from: name } satisfies Call);
  channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (!isCall(data)) return;
    if (data.kind === 'I lead') return asking.get(data.runId)?.();
    const first = asking.has(data.runId) && name < data.from;
    if (leads(data.runId) || first) post('I lead', data.runId);
  });
  const someoneLeads = (runId: string): Promise<boolean> =>
    new Promise((known) => {
      const end = (answered: boolean) => {
        asking.delete(runId);
        known(answered);
      };
      if (channel === undefined) return end(false);
      const timer = setTimeout(() => end(false), patience);
      asking.set(runId, () => {
        clearTimeout(timer);
        end(true);
      });
      post('who leads', runId);
    });
  return { someoneLeads };
}

function isCall(data: unknown): data is Call {
  return typeof data === 'object' && data !== null && 'runId' in data && 'kind' in data;
}
