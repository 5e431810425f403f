/** Which screen the address asks for. The address is the hash, so that one static page serves all. */

export type Route =
  | { readonly at: 'shelf' }
  /** `like` is a past run whose numbers are proposed again. */
  | {
      readonly at: 'begin';
      readonly flow: string;
      readonly like?: string;
      /** True for the next piece of the batch that `like` is of. */
      readonly batch?: boolean;
    }
  | { readonly at: 'run'; readonly run: string }
  /** `operator` is whose runs are looked for. */
  | { readonly at: 'logbook'; readonly operator?: string }
  | { readonly at: 'batch'; readonly batch: string }
  | { readonly at: 'operator'; readonly operator: string }
  | { readonly at: 'kept'; readonly run: string }
  | { readonly at: 'slate'; readonly rule?: string }
  | { readonly at: 'toolroom' }
  | { readonly at: 'ear' };

/** Reads "#/run/abc". What is not known leads to the Shelf. */
export function readRoute(hash: string): Route {
  const [place = '', first, second, third] = hash
    .replace(/^#?\/?/, '')
    .split('/')
    .map(decoded);
  switch (place) {
    case 'begin':
      if (!first) return { at: 'shelf' };
      return {
        at: 'begin',
        flow: first,
        ...(second ? { like: second } : {}),
        ...(second && third === 'batch' ? { batch: true } : {}),
      };
    case 'run':
      return first ? { at: 'run', run: first } : { at: 'shelf' };
    case 'logbook':
      return first ? { at: 'kept', run: first } : { at: 'logbook' };
    case 'runs-of':
      return { at: 'logbook', ...(first ? { operator: first } : {}) };
    case 'batch':
      return first ? { at: 'batch', batch: first } : { at: 'logbook' };
    case 'operator':
      return first ? { at: 'operator', operator: first } : { at: 'toolroom' };
    case 'slate':
      return { at: 'slate', ...(first ? { rule: first } : {}) };
    case 'toolroom':
      return { at: 'toolroom' };
    case 'ear':
      return { at: 'ear' };
    default:
      return { at: 'shelf' };
  }
}

/** The address of a screen, for links. */
export function addressOf(route: Route): string {
  switch (route.at) {
    case 'begin':
      return path('begin', route.flow, route.like, route.batch ? 'batch' : undefined);
    case 'run':
      return path('run', route.run);
    case 'kept':
      return path('logbook', route.run);
    case 'logbook':
      return route.operator === undefined ? path('logbook') : path('runs-of', route.operator);
    case 'batch':
      return path('batch', route.batch);
    case 'operator':
      return path('operator', route.operator);
    case 'slate':
      return path('slate', route.rule);
    default:
      return path(route.at);
  }
}

function path(...parts: readonly (string | undefined)[]): string {
  const given = parts.filter((part) => part !== undefined).map(encodeURIComponent);
  return `#/${given.join('/')}`;
}

/** An address typed by hand may hold a stray percent sign. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
