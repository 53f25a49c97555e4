import type { Rounded } from '../../length/round';
import { markAt, type Tape } from '../../length/tape';
import type { BankPlan } from '../../plan/bank-plan';
import { drawerPart } from '../../trade/boxes/bank-parts';
import type { Drawer } from '../../trade/boxes/drawers';
import type { Size } from '../../trade/carcass/part';
import type { BoxRole } from '../../trade/carcass/part-name';
import type { Sum } from '../../trade/sums/sum';
import * as words from './boxes-words';

/** A size of a box by its name: its mark with what rounding left, and the sum it comes from. */
type BoxLine = { readonly name: string; readonly mark: Rounded; readonly sum: Sum };

/** The sizes of a box: of its pieces those they are cut to, and what is inside. */
export function sizesOf(drawer: Drawer, { bank, parts, drawers }: BankPlan, tape: Tape): readonly BoxLine[] {
  const piece = (role: BoxRole | 'front') => parts.find(({ id }) => id === drawerPart(bank.id, drawer, role));
  const [side, front, back, bottom] = [
    piece('side'),
    piece(drawer.own ? 'front' : 'boxfront'),
    piece('boxback'),
    piece('boxbottom'),
  ];
  const cut = (name: string, size: Size | undefined) =>
    size ? [{ name, mark: size.mark, sum: size.sum }] : [];
  const inside = (name: string, sum: Sum) => ({ name, mark: markAt(sum.value, tape), sum });
  // said by itself it has no sum
  const deep = bank.boxDeep || !drawers?.ok ? undefined : drawers.value.slides.deep;
  return [
    ...(deep ? [inside(words.sizes.deep, deep)] : []),
    ...cut(words.sizes.side, side?.length),
    // dovetailed, it is as long as the box is wide: that stands over all of them
    ...cut(words.sizes.front, bank.boxJoint || drawer.own ? front?.length : undefined),
    ...cut(words.sizes.back, back?.length),
    ...cut(words.sizes.backHeight, back?.width),
    ...cut(words.sizes.bottomWide, bottom?.length),
    ...cut(words.sizes.bottomDeep, bottom?.width),
    inside(words.sizes.insideWide, drawer.box.insideWide),
    inside(words.sizes.insideDeep, drawer.box.insideDeep),
  ];
}
