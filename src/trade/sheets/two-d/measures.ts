import type { Laid, Tree, TwoD } from './two-d';

/**
 * What a plan comes to besides its cost: `left`, area of the largest rectangle left whole; `settings`, fence
 * settings: how many different sizes are cut off, along and across counted apart; `cuts`, all cuts.
 */
type Measures = { readonly left: number; readonly settings: number; readonly cuts: number };

/** What one sheet adds to the measures; settings as keys, minus for across. */
export type Tally = { readonly left: number; readonly settings: readonly number[]; readonly cuts: number };

/** The measures of one sheet. */
export function tallyOf(tree: Tree): Tally {
  const settings = new Set<number>();
  const stack = [tree];
  let left = 0;
  let cuts = 0;
  for (let t = stack.pop(); t; t = stack.pop()) {
    if (t.is === 'left' && t.w * t.h > left) left = t.w * t.h;
    if (t.is !== 'cut') continue;
    cuts += 1;
    settings.add(t.across ? -t.at : t.at);
    stack.push(t.a, t.b);
  }
  return { left, settings: [...settings], cuts };
}

/** The measures of sheets together. */
export function addUpTallies(tallies: readonly Tally[]): Measures {
  const settings = new Set<number>();
  let left = 0;
  let cuts = 0;
  for (const tally of tallies) {
    left = Math.max(left, tally.left);
    cuts += tally.cuts;
    for (const s of tally.settings) settings.add(s);
  }
  return { left, settings: settings.size, cuts };
}

/**
 * The measures of a plan.
 *
 * @param sheets as laid
 * @returns area in square units of the plan; counts
 * @example measuresOf(laid.sheets).cuts // 7
 */
export function measuresOf(sheets: Laid['sheets']): Measures {
  return addUpTallies(sheets.map(({ tree }) => tallyOf(tree)));
}

/** A leftover larger by less than this part of a sheet is no better. Common practice, no source. */
const stepPart = 0.02;

/**
 * The area in whose steps leftovers are compared: 2 % of the largest sheet.
 *
 * @returns square units of the plan, > 0
 * @example leftStep({ sheets: [{ w: 10, h: 10, cost: 1 }], pieces: [] }) // 2
 */
export function leftStep({ sheets }: TwoD): number {
  return stepPart * Math.max(...sheets.map((s) => s.w * s.h));
}

/** A plan as it is compared. */
export type Rank = Measures & { readonly cost: number };

/**
 * Whether plan `a` is better than `b`: cheaper; else a leftover larger by whole steps; else fewer settings; else
 * fewer cuts.
 *
 * @param step as of `leftStep`, > 0
 * @example better({ cost: 1, left: 0, settings: 2, cuts: 9 }, { cost: 1, left: 1, settings: 3, cuts: 9 }, 2) // true
 */
export function better(a: Rank, b: Rank, step: number): boolean {
  if (a.cost !== b.cost) return a.cost < b.cost;
  const steps = Math.floor(a.left / step) - Math.floor(b.left / step);
  if (steps !== 0) return steps > 0;
  return a.settings !== b.settings ? a.settings < b.settings : a.cuts < b.cuts;
}
