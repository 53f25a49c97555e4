import type { Kind } from './stock';
import type { Laid, TwoD } from './two-d';

/** One sheet of kind `of` gives up a strip `off` wide, on its right edge (`right`) or its upper one. */
export type Narrowing = { readonly of: number; readonly right: boolean; readonly off: number };

/** Just the sheets a plan uses: by kind, as many as there are of it in the plan. */
export function kindsIn(problem: TwoD, sheets: Laid['sheets']): readonly Kind[] {
  return problem.sheets.flatMap(({ w, h, cost }, of) => {
    const count = sheets.filter((s) => s.kind === of).length;
    return count > 0 ? [{ of, w, h, count, cost }] : [];
  });
}

/** The same sheets, one of them narrowed, first in the list. */
export function narrowed(kinds: readonly Kind[], { of, right, off }: Narrowing): readonly Kind[] {
  const kind = kinds.find((k) => k.of === of);
  if (!kind) return kinds;
  const less = { ...kind, w: kind.w - (right ? off : 0), h: kind.h - (right ? 0 : off), count: 1 };
  const others = kinds.flatMap((k) =>
    k === kind ? (k.count > 1 ? [{ ...k, count: k.count - 1 }] : []) : [k],
  );
  return [less, ...others];
}
