import type { Length } from '../../length/length';
import { writeLength } from '../../length/write';
import type { Web } from '../../trade/grooves/lands';
import type { Layout } from '../../trade/grooves/lay-out';
import type { Dropped } from '../../trade/grooves/layout';
import { exactly as w } from '../shared/exact-words';
import { callGroove } from '../shared/layout-words';

/** A groove that gives way to a wide one, and why. */
export function droppedText({ groove, by, why, amount }: Dropped): string {
  const reason =
    why === 'overlap' ? `runs ${w(amount)} into` : `would leave only ${w(amount)} of wood beside`;
  return `No. ${groove.no} is left out: it ${reason} the wide ${by.no}. Leave the same number out of the facing board.`;
}

/** The thinnest wood a layout leaves. @example 'The grooves leave 17/32 of 23/32.' */
export function webText(
  found: Web,
  { layout, thickness }: { readonly layout: Layout; readonly thickness: Length },
): string {
  if (found.b === undefined)
    return `Behind the deepest groove ${writeLength(found.web)} of ${writeLength(thickness)} is left.`;
  const [a, b] = [callGroove(layout, found.a), callGroove(layout, found.b)];
  return `Between ${a} and ${b} on the other face ${writeLength(found.web)} of ${writeLength(thickness)} is left.`;
}
