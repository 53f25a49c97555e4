import fc from 'fast-check';
import { type Job, jobOf } from '../../src/job/job';
import { add, half, inches, type Length, longest, subtract, sum, times, zero } from '../../src/length/length';
import { tapes } from '../../src/length/tape';
import { type Case, newCase } from '../../src/trade/carcass/case';
import type { Shop } from '../../src/trade/machines/shop';
import type { CutPiece } from './cut-pieces';
import { type GoesIn, seated } from './seated';

const length = (least: number, most: number, d: bigint) =>
  fc.integer({ min: least * Number(d), max: most * Number(d) }).map((n) => inches(BigInt(n), d));
export const at = (least: number, most: number) =>
  fc.constantFrom(16n, 32n, 127n, 1000n).chain((d) => length(least, most, d));
export const thousandths = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 1000n));
const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => inches(BigInt(n), 16n));

export const shop: Shop = {
  single: inches(1n, 8n),
  bit: inches(1n, 2n),
  routerBase: inches(95n, 32n),
  kerf: inches(5n, 64n),
  shoeKeep: inches(161n, 32n),
  shoeWaste: inches(91n, 64n),
};

/** Not said twice in three times. */
const sometimes = <const T>(...said: readonly T[]) =>
  fc.oneof({ weight: 2, arbitrary: fc.constant(undefined) }, fc.constantFrom(...said));

const cutting = fc.record({
  machine: fc.constantFrom('stop', 'fence', 'index', 'router', 'saw', 'spacers', 'sliding' as const),
  against: fc.constantFrom('reference', 'other' as const),
  stopSide: fc.constantFrom('left', 'right' as const),
  grows: fc.constantFrom('toward', 'away' as const),
  guide: fc.constantFrom('reference', 'far' as const),
  cutter: fc.constantFrom(undefined, inches(1n, 2n)),
});

export const anyJob = fc
  .record({
    tape: fc.constantFrom(...tapes),
    hold: fc.constantFrom('outside', 'openings' as const),
    width: at(30, 72),
    height: at(30, 80),
    depth: at(10, 24),
    opening: at(12, 24),
    clear: at(30, 70),
    feet: fc.constantFrom(zero, inches(4n), inches(33n, 8n)),
    partitions: fc.integer({ min: 0, max: 2 }),
    dado: sixteenths(2, 5),
    topRabbet: fc.option(sixteenths(2, 6), { nil: undefined }),
    hasTop: fc.boolean(),
    bottomJoint: fc.constantFrom(undefined, 'dado', 'rabbet', 'butt', 'over', 'tongue', 'mitre' as const),
    topJoint: fc.constantFrom(undefined, 'rabbet', 'dado', 'butt', 'over', 'tongue', 'mitre' as const),
    sidePast: sometimes(inches(2n), inches(3n, 4n), inches(350n, 127n), inches(1n, 4n)),
    bottomRightJoint: sometimes('dado', 'rabbet', 'butt', 'tongue'),
    topRightJoint: sometimes('rabbet', 'dado', 'butt', 'tongue'),
    partitionJoint: fc.constantFrom(undefined, 'dado', 'butt', 'tongue' as const),
    shelfJoint: fc.constantFrom(undefined, 'dado', 'butt', 'tongue' as const),
    bottomHugs: fc.constantFrom(undefined, 'far', 'near' as const),
    partitionHugs: fc.constantFrom(undefined, 'far', 'near' as const),
    shelfHugs: fc.constantFrom(undefined, 'far', 'near' as const),
    tongue: fc.option(sixteenths(2, 6), { nil: undefined }),
    tongueRoom: fc.option(thousandths(0, 60), { nil: undefined }),
    bottomPast: fc.option(at(0, 1), { nil: undefined }),
    topPast: fc.option(at(0, 1), { nil: undefined }),
    hasBack: fc.boolean(),
    backHow: fc.constantFrom(undefined, 'rabbet', 'groove', 'applied' as const),
    backLand: sixteenths(4, 16),
    hasPlinth: fc.boolean(),
    hasNailers: fc.boolean(),
    nailerDeep: fc.constantFrom(undefined, undefined, inches(1n, 4n), undefined, inches(1n, 127n)),
    plinthLeft: sixteenths(0, 16),
    plinthBack: sixteenths(0, 16),
    hasToe: fc.boolean(),
    toeHow: fc.constantFrom(undefined, 'notch' as const),
    toeBack: sixteenths(8, 64),
    toeClear: sixteenths(0, 4),
    backGroove: sixteenths(3, 5),
    backInset: sixteenths(0, 4),
    thick: fc.tuple(thousandths(680, 800), thousandths(680, 800), thousandths(200, 260)),
    shelves: fc.array(
      fc.record({
        bay: fc.integer({ min: 1, max: 3 }),
        kind: fc.constantFrom('fixed', 'fixed', 'loose', 'stop'),
      }),
      {
        maxLength: 3,
      },
    ),
    cuts: fc.array(cutting, { minLength: 7, maxLength: 7 }),
  })
  .map(
    ({
      tape,
      thick,
      shelves,
      cuts,
      bottomJoint,
      bottomHugs,
      bottomRightJoint,
      sidePast,
      ...rest
    }): { readonly job: Job; readonly c: Case } => {
      const inside = shelves.map(({ bay, kind }, k) => ({
        id: `s${k}`,
        kind: kind as 'fixed' | 'loose' | 'stop',
        bay: Math.min(bay, rest.partitions + 1),
        ...(kind === 'fixed' ? { at: inches(BigInt(6 + 8 * k), 1n) } : {}),
        ...(kind === 'stop' ? { at: inches(BigInt(10 + 8 * k), 1n) } : {}),
      }));
      const c: Case = {
        ...newCase('c'),
        ...rest,
        // a bottom at the lower ends of the sides lies on the floor
        ...(rest.feet.n === 0n || bottomJoint === 'butt' || bottomJoint === 'tongue' ? { bottomJoint } : {}),
        ...(rest.feet.n === 0n || bottomRightJoint !== 'rabbet' ? { bottomRightJoint } : {}),
        ...(rest.feet.n === 0n ? {} : { bottomHugs }),
        // with an end in a rabbet a top lies at the ends of the sides
        ...(rest.topRightJoint === 'rabbet' ? {} : { sidePast }),
        inside,
        stocks: { side: 'a', shelf: 'b', partition: 'b', back: 'k' },
      };
      const stock = thick.map((used, k) => ({
        id: ['a', 'b', 'k'][k] ?? '',
        name: '',
        kind: 'sheet' as const,
        readings: [used],
        readingIds: ['r'],
        used,
        badPlaces: [],
      }));
      const boards = ['left', 'right', 'bottom', 'top', 'partition1', 'partition2'];
      const parts = Object.fromEntries(boards.map((role, k) => [`c~${role}`, { ...cuts[k], pieces: {} }]));
      return { job: { ...jobOf('j', new Map()), tape, stock, cases: [c], parts }, c };
    },
  );

export const middleOf = (piece: CutPiece | undefined, groove: string): Length => {
  const cut = piece?.grooves.get(groove);
  if (!cut) throw new Error(`no groove ${groove}`);
  return half(add(cut.lo, cut.hi));
};

/** How far bottom or top goes past the inner face of a side: into what is cut there, or over its end. */
function reachIn(c: Case, flat: 'bottom' | 'top', at: GoesIn & { side: CutPiece }): Length {
  const [joint, past] = flat === 'bottom' ? [c.bottomJoint, c.bottomPast] : [c.topJoint, c.topPast];
  if (joint === 'over') return add(at.thick, past ?? zero);
  // long point over the outer face of the side
  if (joint === 'mitre') return at.thick;
  const { side } = at;
  return side.grooves.has(flat) ? seated(side, flat, at).reach : (side.rabbets.get(flat)?.deep ?? zero);
}

/** How far the sides run past the top: in rabbets, over them or mitred it lies at their ends. */
export const pastTop = ({ hasTop, topJoint = 'rabbet', sidePast = zero }: Case): Length =>
  hasTop && !['rabbet', 'over', 'mitre'].includes(topJoint) ? sidePast : zero;

/** A case as it stands once its cut pieces are put together, from the left and from the floor or its plinth. */
export type Standing = {
  readonly piece: (role: string) => CutPiece;
  readonly thick: (role: 'side' | 'shelf' | 'back') => Length;
  /** Standing on its own lower end: on a plinth it is not off the floor. */
  readonly c: Case;
  readonly plinth: Length;
  readonly outside: Length;
  /** Left and right face of each wall, from the left: sides and partitions. */
  readonly walls: readonly { readonly role: string; readonly left: Length; readonly right: Length }[];
  readonly datum: Length;
  /** Lower end of the sides, over the floor. */
  readonly foot: Length;
  /** Upper end of the case, over the floor. */
  readonly highest: Length;
};

/** The bottom ends in the floors of its dadoes, so it sets how far apart the sides stand. */
export function assembled(
  said: Case,
  pieces: ReadonlyMap<string, CutPiece>,
  thick: Standing['thick'],
): Standing {
  const plinth = said.hasPlinth ? (said.feet ?? zero) : zero;
  const c = said.hasPlinth ? { ...said, feet: zero } : said;
  const piece = (role: string): CutPiece => {
    const found = pieces.get(`c~${role}`);
    if (!found) throw new Error(`no piece ${role}`);
    return found;
  };
  const side = thick('side');
  const bottom = { piece: piece('bottom'), end: 'left', thick: side };
  const bottomLeft = subtract(side, reachIn(c, 'bottom', { ...bottom, side: piece('left') }));
  const bottomRight = subtract(side, reachIn(c, 'bottom', { ...bottom, end: 'right', side: piece('right') }));
  const outside = sum([piece('bottom').long, bottomLeft, bottomRight]);
  const partitions = Array.from({ length: c.partitions }, (_, k) => {
    const own = { piece: piece(`partition${k + 1}`), end: 'bottom', thick: thick('shelf') };
    const middle = add(bottomLeft, seated(bottom.piece, `p${k + 1}`, own).middle);
    const left = subtract(middle, half(thick('shelf')));
    return { role: `partition${k + 1}`, left, right: add(left, thick('shelf')) };
  });
  const walls = [
    { role: 'left', left: zero, right: side },
    ...partitions,
    { role: 'right', left: subtract(outside, side), right: outside },
  ];
  const foot = c.bottomJoint === 'over' ? side : zero;
  const onTop = c.hasTop && c.topJoint === 'over' ? side : zero;
  const highest = sum([foot, piece('left').long, onTop]);
  return { piece, thick, c, plinth, outside, walls, foot, highest, datum: datumOf(piece('left'), c, bottom) };
}

/** Upper face of the bottom: under the sides, in its rabbet or dado, on its line, or flush with the ends. */
function datumOf(side: CutPiece, c: Case, bottom: GoesIn): Length {
  const rabbet = side.rabbets.get('bottom');
  if (rabbet) return rabbet.wide;
  if (side.grooves.has('bottom') || side.lines.has('bottom'))
    return add(seated(side, 'bottom', bottom).middle, half(bottom.thick));
  // over one side, or mitred with it, it is so with both
  const isRight = bottom.end === 'right' && c.bottomJoint !== 'over' && c.bottomJoint !== 'mitre';
  const bottomJoint = (isRight && c.bottomRightJoint) || c.bottomJoint;
  if (bottomJoint !== 'over' && bottomJoint !== 'butt' && bottomJoint !== 'mitre')
    throw new Error('the bottom hangs in the air');
  return bottom.thick;
}

/** The lower end of a wall over the floor, as it stands: a side on it or on the bottom, a partition in the bottom. */
export function footOf({ piece, thick, datum, foot }: Standing, wall: string): Length {
  if (!wall.startsWith('partition')) return foot;
  const own = { piece: piece(wall), end: 'bottom', thick: thick('shelf') };
  return subtract(datum, seated(piece('bottom'), wall.replace('partition', 'p'), own).reach);
}

/** Every clearance that is meant to be nothing: by how much it is not. */
export function offBy(standing: Standing): ReadonlyMap<string, Length> {
  const { piece, thick, c, outside, walls, datum, foot: lowest, highest } = standing;
  const off = new Map<string, Length>();
  const side = thick('side');
  const [left, right] = [piece('left'), piece('right')];
  const bottom = (end: string) => ({ piece: piece('bottom'), end, thick: side });
  const goes = (role: string, end: string) => ({ piece: piece(role), end, thick: thick('shelf') });
  if (c.feet && c.feet.n > 0n) {
    off.set('bottom over the floor', subtract(datum, add(c.feet, side)));
  }
  off.set('bottom level', subtract(datum, datumOf(right, c, bottom('right'))));
  const topSeat = left.rabbets.get('top');
  const past = pastTop(c);
  const topAt = c.hasTop ? { piece: piece('top'), end: 'left', thick: side } : undefined;
  const topIn = (end: string, at: CutPiece) =>
    subtract(side, topAt ? reachIn(c, 'top', { ...topAt, end, side: at }) : zero);
  const [topLeft, topRight] = [topIn('left', left), topIn('right', right)];
  for (const [end, at] of [
    ['left', left],
    ['right', right],
  ] as const)
    if (topAt && (at.grooves.has('top') || at.lines.has('top'))) {
      const under = subtract(at.long, add(past, half(side)));
      off.set(
        `top in its groove at the ${end}`,
        subtract(seated(at, 'top', { ...topAt, end }).middle, under),
      );
    } else if (past.n !== 0n) off.set(`top hangs in the air at the ${end}`, seen);
  if (c.hasTop) {
    off.set('top joined', subtract(add(piece('top').long, add(topLeft, topRight)), outside));
    for (const at of [left, right]) {
      const seat = at.rabbets.get('top');
      if (seat) off.set('top flush', add(subtract(seat.wide, side), past));
    }
  }
  const top = add(lowest, left.long);
  const onTop = c.hasTop && c.topJoint === 'over';
  const ceiling = c.hasTop && !onTop ? subtract(subtract(top, past), topSeat?.wide ?? side) : top;
  if (c.hold === 'outside') off.set('high', subtract(add(standing.plinth, highest), c.height ?? zero));
  for (const { role, left: face } of walls.slice(1, -1)) {
    const no = role.replace('partition', 'p');
    const inBottom = seated(piece('bottom'), no, goes(role, 'bottom')).reach;
    const atTop = c.hasTop ? seated(piece('top'), no, goes(role, 'top')) : undefined;
    const inTop = atTop?.reach ?? zero;
    off.set(`${role} high`, subtract(piece(role).long, add(subtract(ceiling, datum), add(inBottom, inTop))));
    if (!atTop) continue;
    const above = add(topLeft, atTop.middle);
    off.set(`${role} plumb`, subtract(above, add(face, half(thick('shelf')))));
  }
  for (const shelf of c.inside) {
    const [wallL, wallR] = [walls[shelf.bay - 1], walls[shelf.bay]];
    if (!wallL || !wallR) throw new Error('no bay');
    const bay = subtract(wallR.left, wallL.right);
    if (shelf.kind === 'loose') {
      off.set(`${shelf.id} with its play`, subtract(subtract(bay, inches(1n, 8n)), piece(shelf.id).long));
      continue;
    }
    if (shelf.kind === 'stop') {
      off.set(
        `${shelf.id} clear at both ends`,
        subtract(subtract(bay, inches(1n, 16n)), piece(shelf.id).long),
      );
      continue;
    }
    // the right face of a partition has names of its own
    const [inL, inR] = [wallL.role === 'left' ? shelf.id : `${shelf.id}b`, shelf.id];
    const seats = [
      [wallL.role, seated(piece(wallL.role), inL, goes(shelf.id, 'left'))],
      [wallR.role, seated(piece(wallR.role), inR, goes(shelf.id, 'right'))],
    ] as const;
    const floors = add(seats[0][1].reach, seats[1][1].reach);
    off.set(`${shelf.id} long`, subtract(piece(shelf.id).long, add(bay, floors)));
    for (const [wall, { middle }] of seats) {
      const foot = footOf(standing, wall);
      const under = subtract(add(foot, middle), add(half(thick('shelf')), datum));
      off.set(`${shelf.id} in ${wall}`, subtract(under, shelf.at ?? zero));
    }
  }
  for (const [what, by] of mitresOff(standing)) off.set(what, by);
  for (const [what, by] of plinthOff(standing)) off.set(what, by);
  if (c.hasNailers)
    off.set(
      'nailers between the sides',
      subtract(
        between(outside, subtract(side, left.rabbets.get('nailer1')?.deep ?? zero)),
        piece('nailer').long,
      ),
    );
  for (const [what, by] of toeOff(standing)) off.set(what, by);
  for (const [what, by] of backOff(standing, ceiling)) off.set(what, by);
  const backSeat = left.rabbets.get('back');
  if (c.hasBack && backSeat) {
    const room = inches(1n, 16n);
    const open = between(outside, subtract(side, backSeat.deep));
    off.set('back wide', subtract(subtract(open, room), piece('back').wide));
    const low = longest(c.feet ?? zero, lowest);
    // in a mitred bottom or top it lies in a rabbet as in the sides
    const left = (flat: 'bottom' | 'top') =>
      isMitred(c, flat) ? subtract(side, piece(flat).rabbets.get('back')?.deep ?? zero) : zero;
    const less = sum([room, left('bottom'), left('top')]);
    off.set('back high', subtract(subtract(subtract(top, low), less), piece('back').long));
    for (const flat of ['bottom', ...(c.hasTop ? ['top'] : [])]) {
      const joint = flat === 'bottom' ? c.bottomJoint : c.topJoint;
      const isWhole = joint === 'over' || joint === 'mitre';
      off.set(
        `${flat} deep`,
        subtract(add(piece(flat).wide, isWhole ? zero : backSeat.wide), piece('left').wide),
      );
    }
  }
  return off;
}

const isMitred = (c: Case, flat: 'bottom' | 'top'): boolean =>
  flat === 'bottom' ? c.bottomJoint === 'mitre' : c.hasTop && c.topJoint === 'mitre';

/** At a mitred corner both are mitred, the long points meet, and a rabbet or groove for the back meets its like. */
function mitresOff({ piece, c, outside }: Standing): ReadonlyMap<string, Length> {
  const off = new Map<string, Length>();
  for (const flat of ['bottom', 'top'] as const) {
    const ends = (role: string) => piece(role).mitres;
    for (const role of ['left', 'right'])
      if (ends(role).includes(flat) !== isMitred(c, flat)) off.set(`${role}, ${flat} end`, seen);
    if (!isMitred(c, flat)) continue;
    if (ends(flat).join(' ') !== 'left right') off.set(`${flat}, its ends`, seen);
    off.set(`${flat} to its long points`, subtract(piece(flat).long, outside));
    const [own, side] = [piece(flat).rabbets.get('back'), piece('left').rabbets.get('back')];
    off.set(`rabbet of the ${flat}, wide`, subtract(own?.wide ?? zero, side?.wide ?? zero));
    off.set(`rabbet of the ${flat}, deep`, subtract(own?.deep ?? zero, side?.deep ?? zero));
    if (piece(flat).along.get('back')?.from) off.set(`groove of the ${flat} stopped`, seen);
  }
  return off;
}

/** Sides on a plinth make the height with it; its rails run its length, its cross members stand between them. */
function plinthOff({ piece, thick, c, outside, plinth }: Standing): ReadonlyMap<string, Length> {
  const off = new Map<string, Length>();
  if (plinth.n === 0n) return off;
  const [rail, cross, side] = [piece('plinthrail'), piece('plinthcross'), piece('left')];
  off.set('plinth across', subtract(add(rail.long, c.plinthLeft ?? zero), outside));
  off.set('plinth high', subtract(rail.wide, plinth));
  const rails = times(thick('side'), 2n);
  const deep = add(add(cross.long, rails), add(inches(3n), c.plinthBack ?? zero));
  off.set('plinth deep', subtract(deep, side.wide));
  return off;
}

/** A toe board in notches of the sides: its face the recess behind theirs, over their whole width. */
function toeOff({ piece, thick, c, outside }: Standing): ReadonlyMap<string, Length> {
  const off = new Map<string, Length>();
  const { corner, wide } = piece('left');
  if (!corner) return off;
  const feet = c.feet ?? zero;
  // the board is of the stuff of the sides, and nothing stands before them
  off.set('toe board in the notch', subtract(subtract(corner.deep, thick('side')), c.toeBack ?? zero));
  off.set('notch under the bottom', subtract(corner.high, feet));
  off.set('toe board clear of the floor', subtract(subtract(feet, piece('toe').wide), c.toeClear ?? zero));
  off.set('toe board over both sides', subtract(piece('toe').long, outside));
  if (corner.deep.compare(wide) >= 0) off.set('nothing to stand on', corner.deep);
  const other = piece('right').corner;
  off.set('notches alike', subtract(other?.deep ?? zero, corner.deep));
  return off;
}

/** A back in grooves all round, or laid on the back edges. */
function backOff(standing: Standing, ceiling: Length): ReadonlyMap<string, Length> {
  const { piece, thick, c, outside, walls, datum, highest } = standing;
  const off = new Map<string, Length>();
  const back = c.hasBack ? piece('back') : undefined;
  const left = piece('left');
  if (back && c.backHow === 'applied') {
    const inset = c.backInset ?? zero;
    off.set('back over the sides', subtract(between(outside, inset), back.wide));
    off.set('back over the height', subtract(between(subtract(highest, c.feet ?? zero), inset), back.long));
  }
  const [seat, low] = [left.along.get('back'), piece('bottom').along.get('back')];
  if (!back || c.backHow !== 'groove' || !seat || !low) return off;
  // nailers of the stuff of the sides, before the back where the land does not take them
  const before = c.hasNailers && seat.near.compare(thick('side')) < 0 ? thick('side') : zero;
  const room = inches(1n, 16n);
  const across = between(outside, subtract(thick('side'), seat.deep));
  off.set('back between its grooves', subtract(subtract(across, room), back.wide));
  const high = c.hasTop ? piece('top').along.get('back') : undefined;
  const up = add(subtract(ceiling, datum), add(low.deep, high?.deep ?? zero));
  off.set('back from groove to groove', subtract(subtract(up, room), back.long));
  for (const [role, own] of [
    ['right', piece('right').along.get('back')],
    ['bottom', low],
    ['top', high],
  ] as const)
    if (own) off.set(`groove of the ${role} in line`, subtract(own.near, seat.near));
  for (const [what, by] of grooveEnds(standing, ceiling)) off.set(what, by);
  for (const role of ['bottom', ...(c.hasTop ? ['top'] : [])])
    off.set(`${role} as deep as the sides`, subtract(piece(role).wide, left.wide));
  for (const { role } of walls.slice(1, -1))
    off.set(
      `${role} to the groove`,
      subtract(sum([piece(role).wide, before, seat.near, seat.wide]), left.wide),
    );
  return off;
}

/** Wide enough to be found in any case. */
const seen = inches(1n);

/** The grooves for a back end where those they meet are as deep, or where something covers them. */
function grooveEnds(
  { piece, thick, c, datum, foot }: Standing,
  ceiling: Length,
): ReadonlyMap<string, Length> {
  const off = new Map<string, Length>();
  const side = thick('side');
  for (const [role, joint, past] of [
    ['bottom', c.bottomJoint, c.bottomPast],
    ['top', c.topJoint, c.topPast],
  ] as const) {
    const own = role === 'bottom' || c.hasTop ? piece(role) : undefined;
    const groove = own?.along.get('back');
    if (!own || !groove || joint !== 'over') continue;
    // it lies over all of the side and past it: the groove begins over the floor of that in the side
    const begins = subtract(add(side, past ?? zero), piece('left').along.get('back')?.deep ?? zero);
    off.set(`groove of the ${role} begins`, subtract(groove.from ?? seen, begins));
    off.set(`groove of the ${role} ends`, subtract(subtract(own.long, groove.to ?? seen), begins));
  }
  for (const role of ['left', 'right']) {
    const own = piece(role);
    const groove = own.along.get('back');
    const high = c.hasTop ? piece('top').along.get('back') : undefined;
    if (!groove || !high) continue;
    const rabbet = own.rabbets.get('top');
    const covered =
      c.topJoint === 'over' || isMitred(c, 'top') || (rabbet && rabbet.deep.compare(groove.deep) >= 0);
    const ends = groove.to ? add(foot, groove.to) : undefined;
    if (ends) off.set(`groove of the ${role} as high as the top's`, subtract(ends, add(ceiling, high.deep)));
    else if (!covered) off.set(`groove of the ${role} seen over the top`, seen);
    if (groove.from)
      off.set(
        `groove of the ${role} to the back's foot`,
        longest(zero, subtract(add(foot, groove.from), datum)),
      );
  }
  return off;
}

const between = (whole: Length, each: Length): Length => subtract(whole, times(each, 2n));
