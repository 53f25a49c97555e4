import text from '../../demo-data/shop-figures.json?raw';
import type { Json } from '../job/entry';
import type { Settings } from '../job/settings';
import type { Length } from '../length/length';
import { fromStored } from '../length/stored';
import type { Shop, ShopField } from '../trade/machines/shop';

type Kept = { readonly shop: Readonly<Partial<Record<ShopField, string>>>; readonly lists: Json };

/**
 * What the sample brings of a shop, where this phone has nothing: figures by field, and the lists of what lies in the
 * drawers.
 */
export function figuresFor(
  shop: Shop,
  { lists, shelf }: Pick<Settings, 'lists' | 'shelf'>,
): { readonly figures: readonly (readonly [ShopField, Length])[]; readonly lists: Json | undefined } {
  const kept: Kept = JSON.parse(text);
  const figures = (Object.keys(kept.shop) as ShopField[]).flatMap((field) => {
    const read = fromStored(kept.shop[field] ?? '');
    return shop[field] === undefined && read.ok ? [[field, read.value] as const] : [];
  });
  return { figures, lists: lists === undefined && Object.keys(shelf).length === 0 ? kept.lists : undefined };
}
