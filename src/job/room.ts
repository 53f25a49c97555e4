import type { Length } from '../length/length';
import type { FootPlace } from '../trade/room/feet';
import type { Job } from './job';
import * as r from './room-fields';
import { children, isTree, named, pick, type Tree } from './tree';

type RoomFigures = ReturnType<typeof pick<typeof r.roomFields>>;
export type Across = { readonly id: string } & ReturnType<typeof pick<typeof r.acrossFields>>;
export type Upright = { readonly id: string } & ReturnType<typeof pick<typeof r.uprightFields>>;
type CornerRead = ReturnType<typeof pick<typeof r.cornerFields>>;
export type ZoneRead = { readonly id: string } & ReturnType<typeof pick<typeof r.zoneFields>>;
export type WayRead = { readonly id: string } & ReturnType<typeof pick<typeof r.wayFields>>;
export type GapRead = { readonly id: string } & ReturnType<typeof pick<typeof r.gapFields>>;

/** The room as measured; what was not said is not there. Inches. */
export type Room = RoomFigures & {
  readonly spotsAcross: readonly Across[];
  readonly spotsUpright: readonly Upright[];
  /** By side. */
  readonly corners: Readonly<Record<string, CornerRead>>;
  readonly zones: readonly ZoneRead[];
  readonly ways: readonly WayRead[];
};

/** A foot whose drop was read. Inches. */
export type FootRead = FootPlace & { readonly drop: Length };

/** How a case stands. Inches. */
export type Stand = ReturnType<typeof pick<typeof r.standFields>> & {
  readonly feet: readonly FootRead[];
  readonly gaps: readonly GapRead[];
};

/** The things of a list that are not gone, in the order they were made. */
const list = <T extends { readonly gone: object }>(node: Tree, key: string, fields: T) =>
  children(node, key).flatMap(([id, own]) => {
    const { gone, ...read } = pick(fields, own);
    return gone ? [] : [{ id, ...read }];
  });

const nothing: Tree = new Map();

/** The room of a job as measured. */
export function roomIn({ tree }: Pick<Job, 'tree'>): Room {
  const under = tree.get('room');
  const node = isTree(under) ? under : nothing;
  return {
    ...pick(r.roomFields, node),
    spotsAcross: list(node, 'across', r.acrossFields),
    spotsUpright: list(node, 'upright', r.uprightFields),
    corners: named(children(node, 'corner'), (own) => pick(r.cornerFields, own)),
    zones: list(node, 'zone', r.zoneFields),
    ways: list(node, 'way', r.wayFields),
  };
}

const rows = ['front', 'middle', 'back'] as const;

/** A foot by its id. @example footOf('front2') // { row: 'front', number: 2 } */
export const footOf = (id: string): FootPlace => ({
  row: rows.find((row) => id.startsWith(row)) ?? 'front',
  number: Number(id.slice(-1)),
});

/** @example footId({ row: 'front', number: 2 }) // 'front2' */
export const footId = ({ row, number }: FootPlace): string => `${row}${number}`;

/** How a case of a job stands; of one nothing was said of, nothing. */
export function standIn({ tree }: Pick<Job, 'tree'>, of: string): Stand {
  const node = children(tree, 'cases').find(([id]) => id === of)?.[1] ?? nothing;
  const own = node.get('stand');
  return {
    ...pick(r.standFields, isTree(own) ? own : nothing),
    feet: children(node, 'foot').flatMap(([id, foot]) => {
      const { drop } = pick(r.footFields, foot);
      return drop ? [{ ...footOf(id), drop }] : [];
    }),
    gaps: list(node, 'gap', r.gapFields),
  };
}
