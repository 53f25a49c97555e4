import { over as divided, type Length, sum, times, zero } from '../../length/length';
import { given, minus, plus, type Sum, sharedBy, sumOf } from '../sums/sum';
import type { Case, StockRole } from './case';
import { pastTop } from './meetings';

/**
 * What the mark of the bottom adds to the drawing across, that of the sides up, and their width deep. Inches, any sign.
 */
export type Over = { readonly across: Length; readonly up: Length; readonly deep: Length };

type Across = { readonly width: Sum; readonly clearWidth: Sum; readonly bays: readonly Sum[] };
type Up = { readonly height: Sum; readonly clearHeight: Sum };
type Thick = (stock: StockRole) => Length;

/**
 * Outside and clear sizes of a case, either from the other, whichever is held.
 *
 * @param thick of each piece, inches; @param over is taken by the outside and shared by the bays not given
 * @returns inches, each with its sum
 */
export const heldOf = (
  c: Case,
  thick: Thick,
  over: Over & { readonly plinth: Length },
): { readonly across: Across; readonly up: Up } =>
  c.hold === 'outside'
    ? { across: acrossFromOutside(c, thick, over.across), up: upFromOutside(c, thick, over) }
    : { across: acrossFromOpenings(c, thick, over.across), up: upFromOpenings(c, thick, over.up) };

function acrossFromOutside(c: Case, thick: Thick, over: Length): Across {
  const width = sumOf(plus('outside-width', c.width ?? zero), plus('bottom-mark', over));
  const clearWidth = sumOf(
    plus('outside-width', width.value, moved(width)),
    minus('two-sides', times(thick('side'), 2n)),
  );
  const bays = baysOf(c, thick, clearWidth);
  return { width, clearWidth, bays: allGiven(c) ? bays.map((bay) => shared(bay, over, bays.length)) : bays };
}

function acrossFromOpenings(c: Case, thick: Thick, over: Length): Across {
  const one = given('bay-held', c.opening ?? zero);
  const free = c.partitions + 1 - givenBays(c).length;
  const bays = Array.from({ length: c.partitions + 1 }, (_, k) => {
    const own = c.bays[k];
    if (!own) return shared(one, over, free);
    const bay = given('bay-given', own);
    return free === 0 ? shared(bay, over, c.partitions + 1) : bay;
  });
  const all = sum(bays.map((b) => b.value));
  const partitions = times(thick('partition'), BigInt(c.partitions));
  const clearWidth = sumOf(
    plus('bays-together', all),
    plus({ code: 'partitions', count: c.partitions }, partitions),
  );
  const width = sumOf(
    plus('clear-width', clearWidth.value, clearWidth),
    plus('two-sides', times(thick('side'), 2n)),
  );
  return { width, clearWidth, bays };
}

/** A figure that was said, to be opened where a mark adds to it. */
const moved = (said: Sum): Sum | undefined => (said.terms.length > 1 ? said : undefined);

const givenBays = (c: Case): readonly Length[] =>
  c.bays.slice(0, c.partitions + 1).filter((bay) => bay !== undefined);

const allGiven = (c: Case): boolean => givenBays(c).length > c.partitions;

/** A bay with its equal share of what the mark of the bottom adds. */
const shared = (bay: Sum, over: Length, by: number): Sum =>
  sumOf(...bay.terms, plus('bottom-mark', divided(over, BigInt(by))));

/** Bays not given share what is left of the clear width. */
function baysOf(c: Case, thick: Thick, clearWidth: Sum): readonly Sum[] {
  const n = c.partitions + 1;
  const own = givenBays(c);
  const rest = sharedBy(
    Math.max(1, n - own.length),
    plus('clear-width', clearWidth.value, clearWidth),
    minus({ code: 'partitions', count: c.partitions }, times(thick('partition'), BigInt(n - 1))),
    minus('bays-given', sum(own)),
  );
  return Array.from({ length: n }, (_, k) => {
    const fixed = c.bays[k];
    return fixed ? given('bay-given', fixed) : rest;
  });
}

const topOf = (c: Case, thick: Thick): Length => (c.hasTop ? thick('top') : zero);

type UpOver = { readonly up: Length; readonly plinth: Length };

function upFromOutside(c: Case, thick: Thick, { up, plinth }: UpOver): Up {
  const height = sumOf(
    plus('outside-height', c.height ?? zero),
    minus('plinth', plinth),
    plus('side-mark', up),
  );
  const clearHeight = sumOf(
    plus('outside-height', height.value, moved(height)),
    minus('sides-past-top', pastTop(c)),
    minus('top', topOf(c, thick)),
    minus('floor-to-case', c.feet ?? zero),
    minus('bottom', thick('bottom')),
  );
  return { height, clearHeight };
}

function upFromOpenings(c: Case, thick: Thick, over: Length): Up {
  const clearHeight = sumOf(plus('clear-height-held', c.clear ?? zero), plus('side-mark', over));
  const height = sumOf(
    plus('clear-height-held', clearHeight.value, moved(clearHeight)),
    plus('sides-past-top', pastTop(c)),
    plus('top', topOf(c, thick)),
    plus('bottom', thick('bottom')),
    plus('floor-to-case', c.feet ?? zero),
  );
  return { height, clearHeight };
}
