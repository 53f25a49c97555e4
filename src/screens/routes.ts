/** Where the user is. Kept in the hash, so the app runs under any path and the phone's back works. */
export type Route =
  | { readonly at: 'job' }
  | { readonly at: 'jobs' }
  | { readonly at: 'phone' }
  | { readonly at: 'shop' }
  | { readonly at: 'import' }
  | { readonly at: 'handover' }
  | { readonly at: 'takein' }
  | { readonly at: 'double' }
  | { readonly at: 'last' }
  | { readonly at: 'figure' }
  | { readonly at: 'before'; readonly caution?: string; readonly from?: string }
  | { readonly at: 'cuts' }
  | { readonly at: 'parts' }
  | { readonly at: 'shims' }
  | { readonly at: 'sheets' }
  | { readonly at: 'buy' }
  | { readonly at: 'things' }
  | { readonly at: 'labels' }
  | { readonly at: 'paper' }
  | { readonly at: 'timers' }
  | { readonly at: 'rule' }
  | { readonly at: 'print'; readonly id: string }
  | { readonly at: 'tickin' }
  | { readonly at: 'stick'; readonly id: string; readonly which: string }
  | { readonly at: 'lookback' }
  /** `of`: the place they belong to, by its code. */
  | { readonly at: 'pictures'; readonly of?: string }
  | { readonly at: 'pieces'; readonly id: string }
  | { readonly at: 'layout'; readonly id: string; readonly path?: string }
  /** `of`: the case it is measured for, which the page comes back to. */
  | { readonly at: 'stock'; readonly id: string; readonly of?: string }
  | { readonly at: 'case'; readonly id: string }
  | { readonly at: 'built'; readonly id: string }
  | { readonly at: 'screws'; readonly id: string; readonly step?: string }
  | { readonly at: 'finish'; readonly id: string }
  | { readonly at: 'part'; readonly id: string }
  | { readonly at: 'setup'; readonly id: string }
  | { readonly at: 'stack'; readonly id: string }
  | { readonly at: 'fronts'; readonly id: string }
  | { readonly at: 'bank'; readonly id: string; readonly page?: string }
  | { readonly at: 'opening'; readonly id: string }
  | { readonly at: 'boxes'; readonly id: string }
  | { readonly at: 'contents'; readonly id: string }
  | { readonly at: 'loads'; readonly id: string }
  | { readonly at: 'lift'; readonly id: string }
  | { readonly at: 'solid'; readonly id: string }
  | { readonly at: 'one'; readonly id: string; readonly what: string; readonly step?: string }
  /** `step`, `foot`: one number at a time. */
  | { readonly at: 'room'; readonly page?: string; readonly step?: string }
  | { readonly at: 'level'; readonly id: string; readonly foot?: string }
  | { readonly at: 'scribe'; readonly id: string; readonly step?: string }
  | { readonly at: 'boards' }
  | { readonly at: 'marks'; readonly board: string }
  | { readonly at: 'stops'; readonly board: string }
  | { readonly at: 'change'; readonly board: string }
  | { readonly at: 'tray'; readonly board: string }
  | { readonly at: 'fit'; readonly board: string; readonly groove: string }
  | { readonly at: 'saw'; readonly board: string; readonly setting?: string };

const plain = [
  'jobs',
  'phone',
  'shop',
  'import',
  'handover',
  'takein',
  'double',
  'last',
  'figure',
  'boards',
  'cuts',
  'parts',
  'shims',
  'sheets',
  'buy',
  'things',
  'labels',
  'paper',
  'timers',
  'rule',
  'tickin',
  'lookback',
] as const;
const ofId = [
  'print',
  'stock',
  'pieces',
  'case',
  'built',
  'part',
  'setup',
  'stack',
  'fronts',
  'bank',
  'opening',
  'boxes',
  'contents',
  'loads',
  'lift',
  'solid',
  'screws',
  'finish',
  'level',
  'scribe',
] as const;
const ofBoard = ['marks', 'stops', 'change', 'tray'] as const;

const has = <T extends string>(list: readonly T[], word: string): word is T =>
  (list as readonly string[]).includes(word);

/** @example readRoute('#/saw/b1/r1~3~near') */
export function readRoute(hash: string): Route {
  const [at = '', id = '', rest = '', more = ''] = hash
    .replace(/^#?\/?/, '')
    .split('/')
    .map(decode);
  if (has(plain, at)) return { at };
  if (has(ofBoard, at) && id) return { at, board: id };
  if (at === 'room' && id && rest) return { at, page: id, step: rest };
  if (at === 'room') return id ? { at, page: id } : { at };
  if ((at === 'scribe' || at === 'screws') && id && rest) return { at, id, step: rest };
  if (at === 'level' && id && rest) return { at, id, foot: rest };
  if (at === 'bank' && id && rest) return { at, id, page: rest };
  if (at === 'stock' && id && rest) return { at, id, of: rest };
  if (at === 'stick' && id && rest) return { at, id, which: rest };
  if (has(ofId, at) && id) return { at, id };
  if (at === 'fit' && id && rest) return { at, board: id, groove: rest };
  if (at === 'pictures') return id ? { at, of: id } : { at };
  if (at === 'before') return rest ? { at, caution: id, from: rest } : { at };
  if (at === 'one' && id && rest) return more ? { at, id, what: rest, step: more } : { at, id, what: rest };
  if (at === 'layout' && id) return rest ? { at, id, path: rest } : { at, id };
  if (at === 'saw' && id) return rest ? { at, board: id, setting: rest } : { at, board: id };
  return { at: 'job' };
}

export function writeRoute(route: Route): string {
  const rest = Object.entries(route)
    .filter(([key]) => key !== 'at')
    .map(([, value]) => encodeURIComponent(String(value)));
  return `#/${[route.at === 'job' ? '' : route.at, ...rest].join('/')}`;
}

function decode(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return '';
  }
}
