import { zero } from '../../length/length';
import type { Part } from '../carcass/part';
import type { HungRole } from '../carcass/part-name';
import { given, minus, plus, type Sum, sumOf } from '../sums/sum';
import { type BankPartsAt, bankPart, drawerPart } from './bank-parts';
import type { Drawer, WorkedDrawers } from './drawers';
import type { Hung } from './hung';

/** A piece that a drawer hangs on: how many, and its sizes before they are marked. Inches. */
type HungPiece = {
  readonly role: HungRole;
  readonly copies: number;
  readonly length: Sum;
  readonly width: Sum;
};

/** What is left of a front over the ends of the sides, where it is that of the drawer: nothing hangs before it. */
const before = ({ own, plan }: Drawer) => (own ? plan.lap : zero);

/** The pieces one drawer hangs on: a pair of runners or strips, a pair of kickers, stop blocks. */
function hungPieces(hung: Hung, drawer: Drawer): readonly HungPiece[] {
  const { plan, hung: own } = drawer;
  if (!own) return [];
  const high = given('run-high', hung.high);
  const deep = plus('box-depth', plan.depth);
  const whole = sumOf(deep, minus('front-lap', before(drawer)));
  const behind = sumOf(
    deep,
    minus('front', plan.front),
    minus('groove-stop', hung.land),
    minus('strip-room', hung.room),
  );
  const { stop } = own;
  const reach = sumOf(
    plus('side-play', hung.sidePlay),
    plus('box-side', plan.side),
    plus('past-the-side', hung.catches),
  );
  return [
    hung.how === 'runners'
      ? { role: 'runner', copies: 2, length: whole, width: high }
      : { role: 'hangstrip', copies: 2, length: behind, width: high },
    ...(own.kicker ? [{ role: 'kicker', copies: 2, length: whole, width: high } as const] : []),
    {
      role: 'stopblock',
      copies: 4,
      length: given('block-long', stop.long),
      width: stop.on === 'wall' ? reach : high,
    },
  ];
}

/** What the boxes of a bank hang on where that is no slide: it waits for nothing that is measured as built. */
export function hungParts(worked: WorkedDrawers, at: BankPartsAt): readonly Part[] {
  const { hung } = worked.slides;
  if (!hung) return [];
  const { bank } = worked.fronts;
  return worked.drawers.flatMap((drawer) =>
    hungPieces(hung, drawer).map(({ role, copies, ...sizes }): Part => {
      const named = { id: drawerPart(bank.id, drawer, role), name: { role, ...drawer.place } };
      const made = { ...named, ...sizes, stock: 'runner', end: 'front', fitted: 'length' } as const;
      const { fitted: _, waits: __, opening: ___, ...own } = bankPart(worked.fronts, at, made);
      return { ...own, copies, stage: 'any-time' };
    }),
  );
}
