/**
 * Every cut of the bookcase (bookcase.ts), worked out with pencil and paper from the rules in the READMEs of
 * `src/trade`, not by this code. Inches; a mark is the nearest 1/32 unless it says why not, and `rest` is what the true
 * figure is over its mark.
 *
 * What the cuts go by:
 *
 *     thickest reading of the ply               t  = .714
 *     thin ply                                  tb = .22
 *     dado in the sides, a usual 1/4 deep
 *     rabbet for the top, half the side deep    .714 / 2 = .357
 *     rabbet for the back, a usual 3/8 deep, as wide as the back and 1/16:  .22 + .0625 = .2825
 *     dado, as wide as the ply and .005:        .719
 *     clear width                               30 − 2 × .714 = 28.572
 *     upper face of the bottom over the floor   3 + .714 = 3.714
 *     depth before the back                     11.25 − .2825 = 10.9675
 *
 * The bottom sets the width of the case, so its mark decides what everything after it is reckoned from:
 *
 *     bottom           28.572 + 2 × .25 = 29.072; in 32nds 930.304, so 930/32 = 29 1/16, strong by .0095
 *     outside from it  30 − .0095 = 29.9905
 *     clear from it    28.572 − .0095 = 28.5625
 */
export type CutRow = {
  /** The part, by the end of its id. */
  readonly part: string;
  readonly cut: string;
  /** So many pieces. */
  readonly pieces: number;
  readonly at: string;
  readonly rest: string;
  /** Width of the stack, and how high it stands: nothing where a single blade goes through. */
  readonly stack?: string;
  readonly high?: string;
  /** Face, edge on the fence, what leads, end on the stop. */
  readonly lies: string;
};

/** Ripped and cut to length with the good face up, so that what tears out is under. */
const ripped = 'good up, true edge on fence';
const squared = `${ripped}, squared end to stop`;

/** Before the back: 10.9675 in 32nds is 350.96, so 351/32, scant by .00125. One fence for all. */
const deep = { cut: 'rip', at: '10 31/32', rest: '-1/800', lies: ripped } as const;

type Pair = { readonly left: string; readonly right: string };

/** On either side the same figures from the same end: only the edges change. */
const bothSides = (row: Omit<CutRow, 'part' | 'pieces' | 'lies'>, lies: Pair): readonly CutRow[] => [
  { part: 'left', pieces: 1, ...row, lies: lies.left },
  { part: 'right', pieces: 1, ...row, lies: lies.right },
];

const alike = (lies: string): Pair => ({ left: lies, right: lies });

/** .719 wide, a usual 1/4 deep. */
const dado = { stack: '719/1000', high: '1/4' } as const;

/**
 * On the sled, its fence at your side, the stop left. The left side stands in the case with its inside to your right,
 * its bottom down, its front toward you: laid on its inside with the bottom at your left, the front is toward you, at
 * the fence. The right side is its mirror: there the back is.
 */
const dadoed: Pair = {
  left: 'inside down, front edge on fence, back edge leads, bottom end to stop',
  right: 'inside down, back edge on fence, front edge leads, bottom end to stop',
};

/** Top end on a fence right of the stack: the bottom at your left as before, so the edge away from you leads. */
const toppedAt: Pair = {
  left: 'inside down, top end on fence, back edge leads',
  right: 'inside down, top end on fence, front edge leads',
};

/**
 * Back edge on that fence. The left side lay with its bottom left and its back away: turned clockwise the back comes to
 * the fence at the right and the bottom goes away from you. The right side lay with its back near: turned the other way
 * its bottom comes to you.
 */
const backedAt: Pair = {
  left: 'inside down, back edge on fence, bottom end leads',
  right: 'inside down, back edge on fence, top end leads',
};

export const cutList: readonly CutRow[] = [
  // rips, a true edge on the fence
  ...bothSides({ cut: 'rip', at: '11 1/4', rest: '0' }, alike(ripped)),
  { part: 'bottom', pieces: 1, ...deep },
  { part: 'top', pieces: 1, ...deep },
  { part: 'low', pieces: 1, ...deep },
  { part: 'high', pieces: 1, ...deep },
  { part: 'pins', pieces: 2, ...deep },
  // the back lies in rabbets 3/8 deep with 1/16 of room: 29.9905 − 2 × (.714 − .375) − .0625 = 29.25
  { part: 'back', cut: 'rip', pieces: 1, at: '29 1/4', rest: '0', lies: ripped },
  // strips of the frame: a usual 1 1/2
  { part: 'stile', cut: 'rip', pieces: 2, at: '1 1/2', rest: '0', lies: ripped },
  { part: 'railtop', cut: 'rip', pieces: 1, at: '1 1/2', rest: '0', lies: ripped },
  { part: 'railbottom', cut: 'rip', pieces: 1, at: '1 1/2', rest: '0', lies: ripped },

  // lengths, the squared end on the stop
  ...bothSides({ cut: 'length', at: '48', rest: '0' }, alike(squared)),
  // the shelves are let into the same dadoes as the bottom: exactly as long, so on its stop, at its mark
  { part: 'bottom', cut: 'length', pieces: 1, at: '29 1/16', rest: '19/2000', lies: squared },
  { part: 'low', cut: 'length', pieces: 1, at: '29 1/16', rest: '19/2000', lies: squared },
  { part: 'high', cut: 'length', pieces: 1, at: '29 1/16', rest: '19/2000', lies: squared },
  // 29.9905 − 2 × (.714 − .357) = 29.2765; in 32nds 936.848, so 937/32, scant by .00475
  { part: 'top', cut: 'length', pieces: 1, at: '29 9/32', rest: '-19/4000', lies: squared },
  // 28.5625 less a usual 1/8 of play: 28.4375
  { part: 'pins', cut: 'length', pieces: 2, at: '28 7/16', rest: '0', lies: squared },
  // from the underside of the bottom to the top, less 1/16 of room: 48 − 3 − 1/16
  { part: 'back', cut: 'length', pieces: 1, at: '44 15/16', rest: '0', lies: squared },
  // stiles the full height, 48 − 3; rails between them, 29.9905 − 2 × 1.5 = 26.9905; in 32nds 863.696, so 864/32
  { part: 'stile', cut: 'length', pieces: 2, at: '45', rest: '0', lies: squared },
  { part: 'railtop', cut: 'length', pieces: 1, at: '27', rest: '-19/2000', lies: squared },
  { part: 'railbottom', cut: 'length', pieces: 1, at: '27', rest: '-19/2000', lies: squared },

  // dadoes, centred on what stands in them: half of .719 − .714 = .0025 below its lower face; bottom end on the stop
  // 3 − .0025 = 2.9975: 3, scant by .0025
  ...bothSides({ cut: 'bottom', at: '3', rest: '-1/400', ...dado }, dadoed),
  // 3.714 + 14 − .0025 = 17.7115; in 32nds 566.768, so 567/32, scant by .00725
  ...bothSides({ cut: 'low', at: '17 23/32', rest: '-29/4000', ...dado }, dadoed),
  // 3.714 + 28.75 − .0025 = 32.4615; in 32nds 1038.768, so 1039/32, scant by .00725
  ...bothSides({ cut: 'high', at: '32 15/32', rest: '-29/4000', ...dado }, dadoed),

  // rabbets: so much of the stack shows past the fence, set at the nearest 64th
  // .714 is 45.696/64: 46/64, scant by .00475
  ...bothSides({ cut: 'rabbet top', at: '23/32', rest: '-19/4000', high: '357/1000' }, toppedAt),
  // .2825 is 18.08/64: 18/64, strong by .00125
  ...bothSides({ cut: 'rabbet back', at: '9/32', rest: '1/800', high: '3/8' }, backedAt),
];
