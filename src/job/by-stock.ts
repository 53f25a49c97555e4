/** Fields of a thing as read. */
export type Read = Readonly<Record<string, unknown>>;

const ending = 'Stock';

/**
 * Fields as read, what each piece is of (`sideStock`) gathered into one list. An empty word says nothing.
 *
 * @example byStock({ deep, sideStock: 'a', topStock: '' }) // { deep, stocks: { side: 'a' } }
 */
export function byStock(own: Read): Read & { readonly stocks: Readonly<Record<string, string>> } {
  const said = Object.entries(own).filter(([, value]) => value !== '');
  const isStock = ([name]: readonly [string, unknown]) => name.endsWith(ending);
  const stocks = said.filter(isStock).map(([name, value]) => [name.slice(0, -ending.length), value]);
  return {
    ...Object.fromEntries(said.filter((field) => !isStock(field))),
    stocks: Object.fromEntries(stocks),
  };
}
