import type { Job } from '../job/job';
import { isPositive, type Length, longest } from '../length/length';
import { ownOf, shopAt, worksAs } from '../trade/machines/own-machine';
import type { OwnMachine, Shop, ShopField, Tool } from '../trade/machines/shop';

/** What cuts the sheets of a job: along the guide, and at the fence where it does. Of the shop's own where said. */
export type SheetSaws = {
  readonly guide: OwnMachine | undefined;
  readonly fence: OwnMachine | undefined;
  /** The shop's figures at both. */
  readonly shop: Shop;
  /** The kerf a layout reckons with: the widest blade that may make a cut of it. Inches; undefined: not measured. */
  readonly kerf: Length | undefined;
  /** Saws of the shop's own whose blade may make a cut and is not measured. */
  readonly unmeasured: readonly { readonly saw: OwnMachine; readonly field: ShopField }[];
};

/**
 * The saws that the sheets of a job are cut on: where it names one that this shop has, and that works so, by the
 * figures of that one alone.
 *
 * @example sheetSaws({ guideSaw: 'own2', guideOnly: true }, shop).kerf // of the rail saw, whatever the table saw's is
 */
export function sheetSaws(
  { guideSaw, fenceSaw, guideOnly }: Pick<Job, 'guideSaw' | 'fenceSaw' | 'guideOnly'>,
  shop: Shop,
): SheetSaws {
  const guide = sawOf(shop, guideSaw, 'circular');
  const fence = guideOnly ? undefined : sawOf(shop, fenceSaw, 'fence');
  const at = shopAt(shopAt(shop, guide), fence);
  const blades = [at.kerf, guideOnly ? undefined : at.single].filter((x) => x && isPositive(x));
  const [first, ...rest] = blades.filter((x) => x !== undefined);
  const unmeasured = [
    ...(guide && !at.kerf ? [{ saw: guide, field: 'kerf' as const }] : []),
    ...(fence && !at.single ? [{ saw: fence, field: 'single' as const }] : []),
  ];
  const kerf = unmeasured.length > 0 || !first ? undefined : longest(first, ...rest);
  return { guide, fence, shop: at, kerf, unmeasured };
}

/** Saws the sheets were put on that this phone's shop has not; nothing before its machines are read. */
export const sawsGone = (job: Pick<Job, 'guideSaw' | 'fenceSaw'>, shop: Shop): readonly string[] =>
  'own' in shop
    ? [job.guideSaw, job.fenceSaw].filter((id) => id !== undefined && !ownOf(shop, id)).map((id) => `${id}`)
    : [];

/** Machines of the shop's own that may cut sheets along the guide, or at a rip fence. */
export const sawsLike = ({ own = [] }: Pick<Shop, 'own'>, tool: Tool): readonly OwnMachine[] =>
  own.filter((one) => worksAs(one, tool));

const sawOf = (shop: Shop, id: string | undefined, tool: Tool): OwnMachine | undefined => {
  const named = ownOf(shop, id);
  return named && worksAs(named, tool) ? named : undefined;
};
