import { fromStored } from '../length/stored';
import type { Shop } from '../trade/machines/shop';

/** The shop's figures as they are kept, by field; one that does not read is left out. */
export function readShop(rows: Iterable<readonly [string, unknown]>): Shop {
  const read = [...rows].flatMap(([key, text]) => {
    const found = fromStored(String(text));
    return found.ok ? [[key, found.value] as const] : [];
  });
  return Object.fromEntries(read) as Shop;
}
