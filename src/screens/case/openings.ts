import type { Length } from '../../length/length';
import { asBuilt, backOpening } from '../../trade/carcass/back';
import { backHow } from '../../trade/carcass/back-how';
import { frameOf } from '../../trade/carcass/frame';
import type { Worked } from '../../trade/carcass/parts';
import { openingName } from './built-words';

/** An opening that is measured once the case is dry-fitted. Inches. */
export type Opening = {
  /** What its readings are kept under. */
  readonly key: string;
  readonly name: string;
  /** Nothing of four pins: they are measured from where the user likes. */
  readonly planned?: Length;
  /** Its places are low and high; else left and right. */
  readonly across: boolean;
};

/** The openings of a case to be measured, in the order they are shown. */
export function openingsOf({ sizes }: Worked): readonly Opening[] {
  const { case: c, bays, clearHeight } = sizes;
  const opening = (key: string, planned: Length, across = true): Opening => ({
    key,
    name: openingName(key, bays.length),
    planned,
    across,
  });
  const frame = c.hasFrame ? frameOf(sizes) : undefined;
  const { across, up } = backOpening(sizes);
  const built = asBuilt[backHow(c) ?? 'rabbet'];
  const back = [opening(built.across.key, across.value), opening(built.up.key, up.value, false)];
  return [
    ...bays.map((bay, k) => opening(`bay${k + 1}`, bay.value)),
    opening('clear', clearHeight.value, false),
    ...(c.hasBack ? back : []),
    ...(frame?.openings.map((o, k) => opening(`frame${k + 1}w`, o.wide.value)) ?? []),
    ...fourPins(c, bays.length),
  ];
}

/** The pins of a shelf, in each bay that has shelves on them: the key is never spelled otherwise. */
const fourPins = (c: Worked['sizes']['case'], bays: number): readonly Opening[] =>
  Array.from({ length: bays }, (_, k) => `pins${k + 1}`)
    .filter((_, k) => c.inside.some((i) => i.kind === 'loose' && i.heldBy && i.bay === k + 1))
    .map((key) => ({ key, name: openingName(key, bays), across: false }));
