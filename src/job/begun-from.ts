import { compare } from '../length/length';
import { fromStored } from '../length/stored';
import type { Change, Json } from './entry';

type Values = ReadonlyMap<string, Json>;

type Begun = {
  /** Of the new job. */
  readonly name: string;
  /** What was read of the stock, the room and the air is taken along too. */
  readonly readings: boolean;
};

/** What belongs to the making of one job: what it is called, its plans of sheets, its kept marks, what stands built. */
const ofTheMaking = [
  /^(name|place|standing|deleted)$/,
  /^(sheets|layouts|let|widths|offcuts|kerftest|next|timers|notes|pictures)\//,
  /^prints\/[^/]+\/(bar|across|whole)$/,
  /^stock\/[^/]+\/(planned|used|asRead|have|noMore)$/,
  /^parts\/[^/]+\/(mark|markWide|pieces)\b/,
  /^cases\/[^/]+\/built\//,
  /^banks\/[^/]+\/columns\//,
];

/** Read with a tape, calipers or a meter, of what may still be the same in the next job. */
const asRead = [
  /^stock\/[^/]+\/(readings|reading|bad|badplace)\b/,
  /^room\//,
  /^cases\/[^/]+\/(foot|gap)\//,
  /^(woodNow|woodLow|woodHigh|airLow|airHigh)$/,
];

/**
 * What a job begins with that is to be built like another: what was decided there, in the order it was. Nothing ticked,
 * spoiled or built goes along, no plan of a sheet, and nothing that was removed. A stock is planned as thick as it was
 * reckoned with; with its readings it is reckoned with as they are. What was noted to do otherwise next time goes to
 * what failed last time.
 *
 * @param values of the other job, by path
 * @example begunFrom(fold(entries).values, { name: 'East wall', readings: false })
 */
export function begunFrom(values: Values, { name, readings }: Begun): readonly Change[] {
  const left = [...ofTheMaking, ...(readings ? [] : asRead)];
  const removed = new Set(
    [...values].flatMap(([path, is]) =>
      is === true && /\/gone$/.test(path) ? [path.replace(/gone$/, '')] : [],
    ),
  );
  const kept = [...values].filter(([path]) => !left.some((rule) => rule.test(path)));
  const own = new Map<string, Json>([['name', name], ...kept, ...toHeed(values), ...thick(values, readings)]);
  return [...own]
    .filter(([path]) => !upTo(path).some((thing) => removed.has(thing)))
    .map(([path, value]) => ({ kind: 'edit', path, value }));
}

/** Every thing a path lies under. @example upTo('boards/b/runs/r/pitch') // boards/, boards/b/, boards/b/runs/ … */
const upTo = (path: string): readonly string[] =>
  [...path].flatMap((sign, k) => (sign === '/' ? [path.slice(0, k + 1)] : []));

const mostFailed = 4000;

function toHeed(values: Values): readonly (readonly [string, Json])[] {
  const next = [...values].flatMap(([path, said]) => {
    const [, id] = /^next\/([^/]+)\/said$/.exec(path) ?? [];
    return id !== undefined && typeof said === 'string' && values.get(`next/${id}/gone`) !== true
      ? [said]
      : [];
  });
  const before = values.get('failed');
  const all = [...(typeof before === 'string' && before !== '' ? [before] : []), ...next];
  return all.length > 0 ? [['failed', all.join('\n').slice(0, mostFailed)]] : [];
}

/** How thick each stock is reckoned with: as read, where its readings come along and are in use; else as planned. */
function thick(values: Values, readings: boolean): readonly (readonly [string, Json])[] {
  const stocks = new Set([...values.keys()].flatMap((path) => /^stock\/[^/]+/.exec(path) ?? []));
  return [...stocks].flatMap((at): readonly (readonly [string, Json])[] => {
    const read = greatestIn(values, at);
    const own = values.get(`${at}/planned`) ?? values.get(`${at}/used`) ?? read;
    const planned = own === undefined ? [] : [[`${at}/planned`, own] as const];
    return readings && read !== undefined ? [...planned, [`${at}/asRead`, true]] : planned;
  });
}

/** The greatest thickness read of a stock, as it is stored. */
function greatestIn(values: Values, at: string): string | undefined {
  const one = new RegExp(`^${at}/reading/[^/]+/size$`);
  const single = [...values].flatMap(([path, size]) =>
    one.test(path) && values.get(path.replace(/size$/, 'gone')) !== true ? [size] : [],
  );
  const old = values.get(`${at}/readings`);
  const read = [...single, ...(Array.isArray(old) ? old : [])].flatMap((size) => {
    const length = typeof size === 'string' ? fromStored(size) : undefined;
    return length?.ok ? [{ size: size as string, length: length.value }] : [];
  });
  return read.sort((a, b) => compare(b.length, a.length))[0]?.size;
}
