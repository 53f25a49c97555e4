import type { Change, Entry } from './entry';
import type { Folded } from './folded';
import { keyOf, said } from './merge';
import { fieldAt } from './paths';

/** Whether a place is that of a tombstone, other than those the app writes by itself. */
export const saysGone = (place: string): boolean => place.endsWith('/gone') && !fieldAt(place)?.silent;

/** Tables kept by part, and the ticks of its cuts: a part is named by its board, or begins with its case or bank. */
const byPart = ['cut', 'mark', 'parts', 'widths', 'let', 'shelves', 'lifts', 'solid', 'putup'];

/**
 * The places that could take away what stands at a place.
 *
 * @example goneOver('boards/b1/runs/r1/width') // ['boards/b1/runs/r1/gone', 'boards/b1/gone']
 */
export function goneOver(place: string): readonly string[] {
  const steps = place.split('/');
  const [table = '', part = ''] = steps;
  if (byPart.includes(table)) {
    const [owner] = part.split('~');
    return ['boards', 'cases', 'banks'].map((list) => `${list}/${owner}/gone`);
  }
  const found: string[] = [];
  for (let k = steps.length - 1; k >= 2; k -= 1) found.push(`${steps.slice(0, k).join('/')}/gone`);
  return found.filter((at) => at !== place);
}

/** Keys of the last entry seen of every phone: what the writer of a tombstone knew of (M11). */
export function lastOfEach({ places }: Pick<Folded, 'places'>): readonly string[] {
  const last = new Map<string, Entry>();
  for (const { trail } of places.values())
    for (const entry of trail)
      if (entry.count > (last.get(entry.device)?.count ?? 0)) last.set(entry.device, entry);
  return [...last.values()].map(keyOf);
}

/** Keys of the tombstones by which the thing of a place is away: whoever writes there has seen them (M12). */
export const awayOver = ({ values, places }: Pick<Folded, 'values' | 'places'>, place: string) =>
  goneOver(place).flatMap((at) => (values.get(at) === true ? (places.get(at)?.heads ?? []).map(keyOf) : []));

/** Whether a change takes a thing away. */
export const takesAway = (change: Change): boolean =>
  change.kind === 'edit' && change.value === true && saysGone(change.path);

/** Whether a tombstone and an entry of work on its thing had not seen each other. */
export function unseenBy(gone: Entry, entry: Entry): boolean {
  if (gone.over === undefined || entry.device === gone.device || said(entry) === null) return false;
  if (entry.over?.includes(keyOf(gone))) return false;
  return !gone.over.some((key) => {
    const [count, device] = key.split('.');
    return device === entry.device && Number(count) >= entry.count;
  });
}
