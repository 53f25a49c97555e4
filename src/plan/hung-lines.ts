import { add, type Length } from '../length/length';
import type { Result } from '../length/result';
import type { WorkedDrawers } from '../trade/boxes/drawers';
import { carriesAt, hungFoot } from '../trade/boxes/hung';
import { sideDatum } from '../trade/carcass/ends';
import { reachOf } from '../trade/carcass/meetings';
import type { Line } from '../trade/carcass/part';
import type { Worked } from '../trade/carcass/parts';
import type { Sizes } from '../trade/carcass/sizes';
import type { BankPlan } from './bank-plan';

/** A wall of a bay as a part: its id, where its lower end lies under the bottom's face, and its face to that bay. */
type Wall = { readonly id: string; readonly datum: Length; readonly face?: 'A' | 'B' };

/** The two walls of a bay, left and right. */
function wallsOf(sizes: Sizes, bay: number): readonly Wall[] {
  const { id } = sizes.case;
  const partition = (no: number, face: 'A' | 'B'): Wall => ({
    id: `${id}~partition${no}`,
    datum: reachOf(sizes, 'partition'),
    face,
  });
  const side = (hand: 'left' | 'right'): Wall => ({ id: `${id}~${hand}`, datum: sideDatum(sizes) });
  return [
    bay === 1 ? side('left') : partition(bay - 1, 'B'),
    bay === sizes.bays.length ? side('right') : partition(bay, 'A'),
  ];
}

/** Lower edges of what is screwed to both walls of a bay for a drawer, over the bottom of the case. Inches. */
function placesOf({ fronts, slides, drawers }: WorkedDrawers, bay: number) {
  const column = fronts.columns.find(({ no }) => fronts.bank.bay + no - 1 === bay);
  const { hung } = slides;
  if (!column || !hung) return [];
  const { standUp } = column.opening;
  return drawers
    .filter((drawer) => drawer.column === column.no)
    .flatMap(({ no, hung: own }) => {
      const at = add(add(standUp, hungFoot({ fronts, slides }, no)), carriesAt(hung));
      const carries = { id: `d${no}`, part: hung.how === 'runners' ? 'runner' : 'strip', no, at } as const;
      const kicker =
        own?.kicker && ({ id: `k${no}`, part: 'kicker', no, at: add(standUp, own.kicker.value) } as const);
      return kicker ? [carries, kicker] : [carries];
    });
}

/** Where runners, strips and kickers of all banks stand on the parts beside them: alike on both walls of a bay. */
export function hungLines(
  banks: ReadonlyMap<string, BankPlan>,
  worked: ReadonlyMap<string, Result<Worked, unknown>>,
): ReadonlyMap<string, readonly Line[]> {
  const all = new Map<string, Line[]>();
  for (const { bank, drawers } of banks.values()) {
    const found = worked.get(bank.of ?? '');
    if (!found?.ok || !drawers?.ok || !drawers.value.slides.hung) continue;
    for (const column of drawers.value.fronts.columns) {
      const bay = bank.bay + column.no - 1;
      for (const wall of wallsOf(found.value.sizes, bay)) {
        const lines = placesOf(drawers.value, bay).map(
          ({ id, part, no, at }): Line => ({
            id: `${bank.id}${id}${wall.face ?? ''}`,
            takes: { part, no },
            near: add(wall.datum, at),
            ...(wall.face ? { face: wall.face } : {}),
          }),
        );
        all.set(wall.id, [...(all.get(wall.id) ?? []), ...lines]);
      }
    }
  }
  return all;
}
