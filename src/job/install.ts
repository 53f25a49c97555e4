import type { Values } from './fields';
import { joinFields, kerfFields, nextFields, putUpFields, screwFields } from './install-fields';
import { children, named, pick, type Tree } from './tree';

type Own<T> = Partial<Omit<Values<T>, 'gone'>>;

/** How a case is held to its wall and finished. Inches. */
export type PutUp = Own<typeof putUpFields>;

/** Screws through one thing into another. Inches. */
export type Screws = { readonly id: string; readonly kind: ScrewKind } & Omit<
  Own<typeof screwFields>,
  'kind'
>;

export type ScrewKind = NonNullable<Values<typeof screwFields>['kind']>;

/** What holds a joint from inside: dowels, biscuits or slant screws. Inches. */
export type Join = { readonly id: string; readonly by: JoinBy } & Omit<Own<typeof joinFields>, 'by'>;

export type JoinBy = NonNullable<Values<typeof joinFields>['by']>;

/** One thing to do otherwise next time. */
export type NextTime = { readonly id: string; readonly said: string };

/** A test of a blade's kerf as it was read. Inches. */
export type KerfRead = Own<typeof kerfFields>;

/** What of a job is done once its cases are made. */
export type Install = {
  /** By case, or by bank in a case that is none of the job's. */
  readonly putUp: Readonly<Record<string, PutUp>>;
  readonly screws: readonly Screws[];
  readonly joins: readonly Join[];
  readonly nextTime: readonly NextTime[];
  /** By the shop's figure of the blade. */
  readonly kerfTests: Readonly<Record<string, KerfRead>>;
};

export const installOf = (tree: Tree): Install => ({
  putUp: named(children(tree, 'putup'), (node) => pick(putUpFields, node)),
  screws: children(tree, 'screws').flatMap(([id, node]) => {
    const { gone, kind = 'other', ...own } = pick(screwFields, node);
    return gone ? [] : [{ id, kind, ...own }];
  }),
  joins: children(tree, 'joins').flatMap(([id, node]) => {
    const { gone, by = 'dowel', ...own } = pick(joinFields, node);
    return gone ? [] : [{ id, by, ...own }];
  }),
  kerfTests: named(children(tree, 'kerftest'), (node) => pick(kerfFields, node)),
  nextTime: children(tree, 'next').flatMap(([id, node]) => {
    const { gone, said = '' } = pick(nextFields, node);
    return gone ? [] : [{ id, said }];
  }),
});
