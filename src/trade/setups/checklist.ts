import type { ShopField } from '../machines/shop';
import type { Operation } from './operation';
import type { Setup } from './setup';
import { sameStop } from './stops';

/** What has been ticked, and what was let go ahead though blocked. */
export type Doing = {
  readonly done: (op: string) => boolean;
  readonly let: (op: string) => boolean;
  /** Whether a stock, or the opening of a bank, has been measured. */
  readonly measured: (what: string) => boolean;
  /** How a case stands that was read foot by foot; nothing of one that was not. */
  readonly feet?: (of: string) => FeetStand | undefined;
};

/** Feet of a case, one by one: so many are set. */
export type FeetStand = { readonly set: number; readonly of: number };

export type Blocked =
  | { readonly by: 'layout' }
  /** A figure of the shop is not measured: nothing can be set without it. */
  | { readonly by: 'shop'; readonly field: ShopField }
  | { readonly by: 'operation'; readonly op: Operation }
  | { readonly by: 'stock'; readonly stock: string }
  | { readonly by: 'opening'; readonly bank: string }
  | ({ readonly by: 'feet' } & FeetStand);

/**
 * What keeps an operation from being done now: what must come before and is not ticked, and stock not measured. Nothing
 * once it is done, or was let go ahead.
 */
export function blockedBy(
  op: Operation,
  byId: ReadonlyMap<string, Operation>,
  doing: Doing,
): readonly Blocked[] {
  if (op.cannot) return [op.asks ? { by: 'shop', field: op.asks } : { by: 'layout' }];
  if (doing.done(op.id) || doing.let(op.id)) return [];
  const first = op.after.flatMap((id): readonly Blocked[] => {
    const before = byId.get(id);
    return before && !doing.done(id) ? [{ by: 'operation', op: before }] : [];
  });
  const stock: readonly Blocked[] =
    op.fits !== undefined && !doing.measured(op.fits) ? [{ by: 'stock', stock: op.fits }] : [];
  const opening: readonly Blocked[] =
    op.opening !== undefined && !doing.measured(op.opening) ? [{ by: 'opening', bank: op.opening }] : [];
  return [...first, ...stock, ...opening, ...feetOf(op, doing)];
}

/** A case is level when each foot that was read is set. */
function feetOf({ what, part }: Operation, { feet }: Doing): readonly Blocked[] {
  const stand = what === 'level' ? feet?.(part.replace(/~bench$/, '')) : undefined;
  return stand && stand.set < stand.of ? [{ by: 'feet', ...stand }] : [];
}

/** One setup as it comes up in the order, with what is cut at it then. */
export type Card = {
  /** Its place in the order: a setup that must be left and come back to has two. */
  readonly id: string;
  readonly operations: readonly Operation[];
};

/** The order as cards; each with its operations. @example cardsOf(runs, byId)[0].operations */
export function cardsOf(
  runs: readonly { readonly setup: string; readonly steps: readonly string[] }[],
  byId: ReadonlyMap<string, Operation>,
): readonly Card[] {
  const seen = new Map<string, number>();
  return runs.map(({ setup, steps }) => {
    const nth = (seen.get(setup) ?? 0) + 1;
    seen.set(setup, nth);
    return {
      id: nth === 1 ? setup : `${setup}~~${nth}`,
      operations: steps.flatMap((id) => byId.get(id) ?? []),
    };
  });
}

/**
 * The last call: everything not ticked that still wants what stands, wherever in the order it comes. `sameSetup` wants
 * this very figure; `sameBuild` wants this cutter and height at another figure.
 */
export function lastCall(
  setup: Pick<Setup, 'key' | 'build' | 'figure'>,
  operations: readonly Operation[],
  done: (op: string) => boolean,
): { readonly sameSetup: readonly Operation[]; readonly sameBuild: readonly Operation[] } {
  const open = operations.filter((op) => op.setup.build === setup.build && !done(op.id));
  return {
    sameSetup: open.filter((op) => sameStop(op.setup, setup)),
    sameBuild: open.filter((op) => !sameStop(op.setup, setup)),
  };
}
