const isPlain = (x: unknown): x is Record<string, unknown> => {
  if (typeof x !== 'object' || x === null) return false;
  return !(x instanceof Map || x instanceof Set);
};

/**
 * Whether two figures, lists or records say the same, key by key; what holds a function, a map or a set is like itself
 * alone.
 *
 * @example alike({ at: inches(1n, 2n) }, { at: inches(2n, 4n) }) // true
 */
export function alike(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (!isPlain(a) || !isPlain(b) || Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && alike(a[key], b[key]))
  );
}
