import type { Entry, Json } from '../../job/entry';

/** What a phone has of a job: by the phone that wrote it, the greatest count up to which it has all. */
export type Known = ReadonlyMap<string, number>;

/** What a log holds, by the phones that wrote it. */
export function knownIn(entries: readonly Entry[]): Known {
  const known = new Map<string, number>();
  for (const { device, count } of entries) known.set(device, Math.max(count, known.get(device) ?? 0));
  return known;
}

/** What is known from either. */
export function together(a: Known, b: Known): Known {
  const all = new Map(a);
  for (const [device, count] of b) all.set(device, Math.max(count, all.get(device) ?? 0));
  return all;
}

/** The entries beyond what is known: what the other phone has still to get. */
export const beyond = (entries: readonly Entry[], known: Known): readonly Entry[] =>
  entries.filter(({ device, count }) => count > (known.get(device) ?? 0));

/** What the other phone is known to have of a job, as kept on this one; undefined when it was never handed over. */
export function handedOf(handed: Json | undefined, job: string): Known | undefined {
  const now = isObject(handed) ? handed[job] : undefined;
  if (!isObject(now)) return undefined;
  const rows = Object.entries(now).flatMap(([device, count]) =>
    Number.isSafeInteger(count) && Number(count) > 0 ? [[device, Number(count)] as const] : [],
  );
  return rows.length > 0 ? new Map(rows) : undefined;
}

/** What is kept of all jobs, with one job's put in its place. */
export const withHanded = (handed: Json | undefined, job: string, known: Known): Json => ({
  ...(isObject(handed) ? handed : {}),
  [job]: Object.fromEntries(known),
});

const isObject = (json: Json | undefined): json is { readonly [key: string]: Json } =>
  typeof json === 'object' && json !== null && !Array.isArray(json);
