type Known<T> = { readonly of: readonly unknown[]; readonly made: T };

/** The last few ways a thing was asked about. */
const most = 4;

const same = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((x, k) => x === b[k]);

/**
 * What is worked out from one thing is kept as long as the thing is, and worked out once for the same things beside
 * it. Nothing given to a keeper, and nothing it gives, is ever changed in place.
 *
 * @returns `of` is all else that `make` reads, each told by being the very same value
 * @example const kept = keeper<Part, number>(); kept(part, [tape], () => dear(part, tape))
 */
export function keeper<K extends object, T>(): (thing: K, of: readonly unknown[], make: () => T) => T {
  const known = new WeakMap<K, readonly Known<T>[]>();
  return (thing, of, make) => {
    const list = known.get(thing) ?? [];
    const before = list.find((one) => same(one.of, of));
    if (before) return before.made;
    const made = make();
    known.set(thing, [{ of, made }, ...list].slice(0, most));
    return made;
  };
}
