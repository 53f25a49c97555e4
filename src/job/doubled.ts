import type { Entry } from './entry';
import type { Folded } from './log';
import { said } from './merge';
import { fieldAt } from './paths';
import { goneOver } from './tombstones';

/** One place with its readings that stand beside each other; of several that say the same, the last. In order. */
export type Doubled = { readonly place: string; readonly readings: readonly Entry[] };

/**
 * What a person has to settle: readings, decisions and ticks that two phones wrote, neither knowing of the other's.
 * Silent fields are not asked about (M14), nor is anything of a thing that is away.
 */
export const doubledIn = ({ doubled, places, kept, values }: Folded): readonly Doubled[] =>
  [...doubled].flatMap((place) =>
    fieldAt(place)?.silent || goneOver(place).some((at) => values.get(at) === true)
      ? []
      : [
          {
            place,
            readings: [...differing(places.get(place)?.heads ?? []), ...worked(place, kept.get(place))],
          },
        ],
  );

const differing = (heads: readonly Entry[]): readonly Entry[] => [
  ...new Map(heads.map((head) => [JSON.stringify(said(head)), head])).values(),
];

/** Work that a tombstone had not seen counts as the reading “not gone”. */
const worked = (place: string, work: Entry | undefined): readonly Entry[] => {
  if (!work) return [];
  const { job, device, count, at, act, label } = work;
  return [{ job, device, count, at, act, label, kind: 'edit', path: place, value: false }];
};
