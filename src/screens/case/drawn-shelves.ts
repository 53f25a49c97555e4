import { forDrawing as d, half, type Length, subtract, zero } from '../../length/length';
import type { Inside } from '../../trade/carcass/case';
import type { Sizes } from '../../trade/carcass/sizes';
import { boresIn } from '../../trade/shelves/bores';
import { openingsIn } from '../../trade/shelves/openings';
import { sameRows } from '../../trade/shelves/same-rows';
import { stripsOf } from '../../trade/shelves/strips';
import type { DrawnPiece } from '../../ui/case-drawing';

/** An opening of a bay with so many loose shelves in it, inches over the case bottom; for pictures only. */
type Opening = { readonly low: number; readonly high: number; readonly shelves: number };

/** A loose shelf as it is drawn: which set it is of, and its lower face over the case bottom, in plain inches. */
type LoosePlace = { readonly inside: Inside; readonly y: number };

const looseIn = ({ case: c }: Sizes, bay: number): readonly Inside[] =>
  c.inside.filter((i) => i.kind === 'loose' && i.bay === bay);

/**
 * Where the loose shelves of a bay might stand: each goes into the opening that is left highest, evenly there; on pins
 * it lies over the holes that are nearest.
 *
 * @returns from the bottom up, the sets in the order of the list
 */
function loosePlaces(sizes: Sizes, bay: number): readonly LoosePlace[] {
  const all = looseIn(sizes, bay)
    .flatMap((inside) => Array.from({ length: inside.count ?? 1 }, () => inside))
    .slice(0, mostDrawn);
  const open = openingsIn(sizes, bay).map(({ low, high }) => ({ low: d(low), high: d(high), shelves: 0 }));
  const shared = all.reduce<readonly Opening[]>(withOneMore, open);
  const thick = d(sizes.thick('shelf'));
  const ys = shared.flatMap((opening) =>
    Array.from({ length: opening.shelves }, (_, k) => opening.low + eachOf(opening) * (k + 1) - thick / 2),
  );
  return overHoles(
    sizes,
    bay,
    ys.flatMap((y, k) => (all[k] ? [{ inside: all[k], y }] : [])),
  );
}

/** Each on the pins nearest to it that no other lies on; where there are none it stays. */
function overHoles(sizes: Sizes, bay: number, places: readonly LoosePlace[]): readonly LoosePlace[] {
  const rows = rowsIn(sizes, bay).filter(({ row }) => row === 'front');
  const taken = new Set<string>();
  return places.map(({ inside, y }) => {
    const set = (sameRows(sizes, inside) ?? inside).id;
    const bore = rows.find((row) => row.inside === set);
    const free = bore?.holes.filter(({ no }) => !taken.has(`${set} ${no}`)) ?? [];
    const up = ({ at }: { readonly at: Length }): number => d(at) + d(bore?.dia ?? zero) / 2;
    const [first, ...rest] = free;
    if (!first) return { inside, y };
    const near = rest.reduce((a, b) => (Math.abs(up(b) - y) < Math.abs(up(a) - y) ? b : a), first);
    taken.add(`${set} ${near.no}`);
    return { inside, y: up(near) };
  });
}

/** Rows of holes of a bay, up from the case bottom. */
const rowsIn = (sizes: Sizes, bay: number) => boresIn(sizes, bay, { face: 'A', datum: zero });

/** More would be a grey block. */
const mostDrawn = 40;

const eachOf = ({ low, high, shelves }: Opening): number => (high - low) / (shelves + 1);

function withOneMore(openings: readonly Opening[]): readonly Opening[] {
  const highest = openings.reduce((a, b) => (eachOf(b) > eachOf(a) + 1e-9 ? b : a));
  return openings.map((o) => (o === highest ? { ...o, shelves: o.shelves + 1 } : o));
}

const bayNumbers = ({ bays }: Sizes): readonly number[] => bays.map((_, k) => k + 1);

const partOf = ({ case: c }: Sizes, { id }: Pick<Inside, 'id'>): string => `${c.id}~${id}`;

/** Loose shelves from the front, by where a bay begins. */
export const looseFront = (sizes: Sizes, leftOf: (bay: number) => Length): readonly DrawnPiece[] =>
  bayNumbers(sizes).flatMap((bay) =>
    loosePlaces(sizes, bay).map(({ inside, y }) => ({
      part: partOf(sizes, inside),
      kind: 'loose',
      x: d(leftOf(bay)),
      y: d(sizes.datum.value) + y,
      w: d(sizes.bays[bay - 1]?.value ?? zero),
      h: d(sizes.thick('shelf')),
    })),
  );

/** Loose shelves cut through, as deep as they are with their edging; each bay's, as if one stood before the other. */
export const looseSection = (sizes: Sizes, front: Length): readonly DrawnPiece[] =>
  bayNumbers(sizes).flatMap((bay) =>
    loosePlaces(sizes, bay).map(({ inside: { heldBy, frontPlay = zero, backPlay = zero, ...i }, y }) => ({
      part: partOf(sizes, i),
      kind: 'loose',
      x: d(front) + (heldBy ? d(frontPlay) : 0),
      y: d(sizes.datum.value) + y,
      w: d(sizes.inner.value) - (heldBy ? d(frontPlay) + d(backPlay) : 0),
      h: d(sizes.thick('shelf')),
    })),
  );

/** What holds the loose shelves, in the wall behind them: rows of holes, or metal strips. */
export const holdersSection = (sizes: Sizes, front: Length): readonly DrawnPiece[] =>
  bayNumbers(sizes).flatMap((bay) => [
    ...rowsIn(sizes, bay).flatMap((bore) =>
      bore.holes.map(({ at }) => ({
        part: partOf(sizes, { id: bore.inside }),
        kind: 'hole' as const,
        x: d(front) + d(bore.off) - d(half(bore.dia)),
        y: d(sizes.datum.value) + d(at) - d(half(bore.dia)),
        w: d(bore.dia),
        h: d(bore.dia),
      })),
    ),
    ...looseIn(sizes, bay).flatMap((i) => strips(sizes, i, front)),
  ]);

function strips(sizes: Sizes, i: Inside, front: Length): readonly DrawnPiece[] {
  const found = stripsOf(sizes, i);
  if (!found || !i.width) return [];
  const room = d(half(subtract(found.width, i.width)));
  return found.pieces
    .filter(({ long }) => d(long) > 0)
    .flatMap(({ low, long }) =>
      [found.front, found.rear].map((near) => ({
        part: partOf(sizes, i),
        kind: 'strip' as const,
        x: d(front) + d(near) + room,
        y: d(sizes.datum.value) + d(low),
        w: d(i.width ?? zero),
        h: d(long),
      })),
    );
}
