import { add, atMost, type Length, shortest, subtract, zero } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { ReferenceFace } from '../fasteners/row';
import type { Face } from '../grooves/layout';
import type { Butted } from './butted';
import { endAt, type Flat, type Hand, jointAt, pastOf } from './meetings';
import type { Part } from './part';
import type { TakesPart } from './part-name';
import type { Worked } from './parts';

/** An end of a part that goes square against the face of another, nothing cut for it. Inches. */
export type FastenedEnd = {
  /** Names its row on the mate. */
  readonly id: string;
  readonly holds: TakesPart;
  readonly part: Part;
  readonly end: string;
  readonly face: ReferenceFace;
  readonly mate: Part;
  readonly off: string;
  /** From there to that face. */
  readonly near: Length;
  /** Which face of a partition it goes against. */
  readonly on?: Face;
};

const hands = ['left', 'right'] as const satisfies readonly Hand[];

/**
 * Where parts of a case are butted to others at one kind of meeting: which end, against what, and how far in.
 *
 * @example fastenedEnds(worked, 'bottom').length // 2: at the left side and at the right one
 */
export function fastenedEnds(worked: Worked, what: Butted): readonly FastenedEnd[] {
  if (what === 'partition') return partitionEnds(worked);
  return what === 'shelf' ? shelfEnds(worked) : hands.flatMap((hand) => flatEnd(worked, what, hand));
}

const partAt = ({ sizes, parts }: Worked, role: string): Part | undefined =>
  parts.find(({ id }) => id === `${sizes.case.id}~${role}`);

/** A bottom or top between the sides; where it lies over them it is their ends that go against it. */
function flatEnd(worked: Worked, flat: Flat, hand: Hand): readonly FastenedEnd[] {
  const { case: c } = worked.sizes;
  const [own, side] = [partAt(worked, flat), partAt(worked, hand)];
  if (!own || !side) return [];
  const joint = jointAt(c, endAt(flat, hand));
  if (joint === 'over') {
    const over = { part: side, end: flat, face: 'outside', mate: own, off: hand } as const;
    return [{ id: hand, holds: { part: 'side' }, ...over, near: pastOf(c, flat) }];
  }
  if (joint !== 'butt') return [];
  const line = side.lines?.find(({ id }) => id === flat);
  const at = { id: flat, holds: { part: flat }, part: own, end: hand, mate: side } as const;
  // a top at the ends of the sides is measured down from them
  return !line && flat === 'top'
    ? [{ ...at, face: 'upper', off: 'top', near: zero }]
    : [{ ...at, face: 'under', off: 'bottom', near: line?.near ?? zero }];
}

function partitionEnds(worked: Worked): readonly FastenedEnd[] {
  const { case: c } = worked.sizes;
  if (jointAt(c, 'partition') !== 'butt') return [];
  const flats: readonly Flat[] = c.hasTop ? ['bottom', 'top'] : ['bottom'];
  return Array.from({ length: c.partitions }, (_, k) => k + 1).flatMap((no) =>
    flats.flatMap((flat) => {
      const [part, mate] = [partAt(worked, `partition${no}`), partAt(worked, flat)];
      const line = mate?.lines?.find(({ id }) => id === `p${no}`);
      return part && mate && line
        ? [{ ...onLine(line), part, end: flat, face: 'left', mate, off: 'left' } as const]
        : [];
    }),
  );
}

function shelfEnds(worked: Worked): readonly FastenedEnd[] {
  const { case: c } = worked.sizes;
  if (jointAt(c, 'shelf') !== 'butt') return [];
  return c.inside
    .filter(({ kind }) => kind === 'fixed')
    .flatMap(({ id, bay }) =>
      hands.flatMap((end) => {
        const inSide = end === 'left' ? bay === 1 : bay === c.partitions + 1;
        const mate = partAt(worked, inSide ? end : `partition${end === 'left' ? bay - 1 : bay}`);
        const on: Face = !inSide && end === 'left' ? 'B' : 'A';
        const line = mate?.lines?.find((one) => one.id === (on === 'B' ? `${id}b` : id));
        const part = partAt(worked, id);
        if (!part || !mate || !line) return [];
        const at = { part, end, face: 'under', mate, off: 'bottom' } as const;
        return [{ ...onLine(line), ...at, ...(inSide ? {} : { on }) }];
      }),
    );
}

const onLine = ({ id, takes, near }: NonNullable<Part['lines']>[number]) => ({ id, holds: takes, near });

/** How thick parts and mates are, and how long the shortest of the joints is, from the front edge. Inches. */
export function meetingOf({ sizes }: Worked, ends: readonly FastenedEnd[], tape: Tape) {
  const inner = markAt(sizes.inner.value, tape).value;
  const thick = (of: 'part' | 'mate') => least(ends.flatMap((end) => end[of].thickness ?? []));
  return { part: thick('part'), mate: thick('mate'), run: least(ends.map((end) => runAt(end, inner))) };
}

const least = ([first, ...rest]: readonly Length[]): Length | undefined => first && shortest(first, ...rest);

/** What is cut away at the back of the end is no joint: a notch for a cleat, a rabbet for what lies behind. */
function runAt({ part, end, mate }: FastenedEnd, inner: Length): Length {
  const wide = part.width.mark.value;
  const lost = [
    ...part.notches.filter(({ near, long }) => touches(part, end, near, add(near, long))).map((n) => n.deep),
    ...part.rabbets
      .filter(({ along, from = zero, to = part.length.sum.value }) => {
        return along.at === 'edge' && along.named === 'back' && touches(part, end, from, to);
      })
      .map((rabbet) => rabbet.width),
  ];
  return shortest(inner, mate.width.mark.value, wide, ...lost.map((x) => subtract(wide, x)));
}

const touches = (part: Part, end: string, from: Length, to: Length): boolean =>
  end === part.end ? atMost(from, zero) : atMost(part.length.sum.value, to);
