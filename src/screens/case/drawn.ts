import { add, forDrawing, isZero, type Length, negate, subtract, sum, zero } from '../../length/length';
import { throughBack } from '../../trade/carcass/back-how';
import { partitionFace } from '../../trade/carcass/boards';
import type { Case, Inside } from '../../trade/carcass/case';
import { flatWide, overSides, sideLong } from '../../trade/carcass/ends';
import { type FaceFrame, frameLapped, frameOf } from '../../trade/carcass/frame';
import { endAt, pastOf, pastTop, seenOf } from '../../trade/carcass/meetings';
import { mitresAt } from '../../trade/carcass/mitres';
import type { Worked } from '../../trade/carcass/parts';
import { bayStart, type Sizes } from '../../trade/carcass/sizes';
import { numberOf } from '../../trade/carcass/stands-as';
import { layOut } from '../../trade/grooves/lay-out';
import type { DrawnPiece } from '../../ui/case-drawing';
import { backAt, nailersAt } from './drawn-back';
import { withMitres } from './drawn-mitres';
import { onPlinth, plinthFront, plinthSection } from './drawn-plinth';
import { holdersSection, looseFront, looseSection } from './drawn-shelves';
import { stopsCut, stopsFront } from './drawn-stops';
import { toeFront, toeSection } from './drawn-toe';

type Drawing = {
  readonly wide: number;
  readonly high: number;
  readonly pieces: readonly DrawnPiece[];
};

const d = forDrawing;

type At = { readonly x: Length; readonly y: Length; readonly w: Length; readonly h: Length };

type Make = (role: string, at: At, kind?: DrawnPiece['kind']) => DrawnPiece;

/** Makes pieces of a case: by their role, in plain numbers. */
const maker =
  ({ sizes }: Worked): Make =>
  (role, at, kind = 'ply') => ({
    part: `${sizes.case.id}~${role}`,
    x: d(at.x),
    y: d(at.y),
    w: d(at.w),
    h: d(at.h),
    kind,
  });

/** The case from the front, to scale. */
export function frontOf(worked: Worked): Drawing {
  const { sizes } = worked;
  const { case: c, thick, width, height, clearWidth, clearHeight } = sizes;
  const side = thick('side');
  const feet = c.feet ?? zero;
  const piece = maker(worked);
  const across = (flat: 'bottom' | 'top') => {
    const [left, right] = [seenOf(sizes, flat), seenOf(sizes, endAt(flat, 'right'))];
    return { x: subtract(side, left), w: sum([clearWidth.value, left, right]) };
  };
  const ownEnds = (role: 'left' | 'right' | 'bottom' | 'top', at: At) =>
    withMitres(piece(role, at), role, mitresAt(c, role));
  const upright = { y: overSides(sizes, 'bottom'), w: side, h: sideLong(sizes).value };
  const topY = add(sizes.datum.value, clearHeight.value);
  const pieces = [
    ownEnds('left', { ...upright, x: zero }),
    ownEnds('right', { ...upright, x: add(side, clearWidth.value) }),
    ownEnds('bottom', { ...across('bottom'), y: feet, h: thick('bottom') }),
    ...(c.hasTop ? [ownEnds('top', { ...across('top'), y: topY, h: thick('top') })] : []),
    ...Array.from({ length: c.partitions }, (_, k) =>
      piece(`partition${k + 1}`, {
        x: add(side, partitionFace(sizes, k + 1)),
        y: sizes.datum.value,
        w: thick('partition'),
        h: clearHeight.value,
      }),
    ),
    ...toeFront(sizes, piece),
    ...shelves(worked, piece),
    ...looseFront(sizes, leftOf(sizes)),
    ...stopsFront(sizes, piece),
    ...(c.hasFrame ? frame(sizes, piece) : []),
  ];
  const past = [c.hasFrame ? (c.overhang ?? zero) : zero, pastOf(c, 'bottom'), pastOf(c, 'top')];
  const over = Math.max(...past.map(d));
  const own = { wide: d(width.value) + 2 * over, high: d(height.value), pieces };
  const raised = onPlinth(sizes, own, plinthFront(sizes, piece));
  return { ...raised, pieces: raised.pieces.map((p) => ({ ...p, x: p.x + over })) };
}

/** Left edge of a bay. */
const leftOf =
  (sizes: Sizes) =>
  (bay: number): Length =>
    add(sizes.thick('side'), bayStart(sizes, bay));

function numbered(c: Case, i: Inside, piece: DrawnPiece): DrawnPiece {
  const no = numberOf(c, i);
  return no === undefined ? piece : { ...piece, no };
}

function shelves({ sizes, parts }: Worked, piece: Make): readonly DrawnPiece[] {
  const { case: c, thick, bays, datum } = sizes;
  const left = leftOf(sizes);
  return c.inside.flatMap((i) => {
    const w = bays[i.bay - 1]?.value;
    if (!w) return [];
    if (i.kind === 'fixed')
      return [
        numbered(
          c,
          i,
          piece(i.id, { x: left(i.bay), y: add(datum.value, i.at ?? zero), w, h: thick('shelf') }),
        ),
      ];
    if (i.kind !== 'trays') return [];
    const wall = parts.find(
      (p) => p.id === `${c.id}~${i.bay === 1 ? 'left' : `partition${i.bay - 1}`}`,
    )?.board;
    const run = i.bay === 1 ? i.id : `${i.id}b`;
    const from = wall?.datum ?? zero;
    return (wall ? layOut(wall).grooves : [])
      .filter((g) => g.run === run)
      .map((g) =>
        piece(
          i.id,
          { x: left(i.bay), y: sum([datum.value, g.near, negate(from)]), w, h: thick('tray') },
          'groove',
        ),
      );
  });
}

/** Rails, stiles and middle stiles of the face frame, those half-lapped over the rails, and rails in its bays. */
function frame(sizes: Sizes, piece: Make): readonly DrawnPiece[] {
  const f = frameOf(sizes);
  const left = negate(sizes.case.overhang ?? zero);
  const stile = (x: Length) =>
    piece('stile', { x, y: f.lowEnd, w: f.pieces.stile, h: f.height.value }, 'frame');
  const railsAt = frameLapped(sizes.case) ? left : add(left, f.pieces.stile);
  const rail = (role: string, y: Length, h: Length) =>
    piece(role, { x: railsAt, y, w: f.rails.value, h }, 'frame');
  return [
    rail('railbottom', f.railLow, f.pieces.bottom),
    rail('railtop', sum([f.lowEnd, f.height.value, negate(f.pieces.top)]), f.pieces.top),
    stile(left),
    stile(sum([left, f.width.value, negate(f.pieces.stile)])),
    ...middles(sizes, f, piece),
    ...bayRails(sizes, f, piece),
  ];
}

const overBottomRail = (f: FaceFrame): Length => add(f.railLow, f.pieces.bottom);

const middles = (sizes: Sizes, f: FaceFrame, piece: Make): readonly DrawnPiece[] =>
  Array.from({ length: sizes.case.partitions }, (_, k) => {
    const covered = negate(f.openings[k]?.right.value ?? zero);
    const x = sum([sizes.thick('side'), partitionFace(sizes, k + 1), covered]);
    const y = frameLapped(sizes.case) ? f.railLow : overBottomRail(f);
    return piece('middle', { x, y, w: f.pieces.middle, h: f.uprights.value }, 'frame');
  });

const bayRails = (sizes: Sizes, f: FaceFrame, piece: Make): readonly DrawnPiece[] =>
  sizes.case.inside
    .filter((i) => i.kind === 'rail')
    .map((i) => {
      const opening = f.openings[i.bay - 1];
      const x = sum([sizes.thick('side'), bayStart(sizes, i.bay), opening?.left.value ?? zero]);
      const y = add(overBottomRail(f), i.at ?? zero);
      return piece(i.id, { x, y, w: opening?.wide.value ?? zero, h: i.wide ?? zero }, 'frame');
    });

/** The case cut through from front to back, seen from the right: front at the left. */
export function sectionOf(worked: Worked): Drawing {
  const { sizes } = worked;
  const front = sizes.case.hasFrame ? sizes.thick('frame') : zero;
  const piece = maker(worked);
  const own = {
    wide: d(add(throughBack(sizes).value, front)),
    high: d(sizes.height.value),
    pieces: [
      ...sideOver(sizes, front, piece),
      ...levels(sizes, front, piece),
      ...holdersSection(sizes, front),
      ...looseSection(sizes, front),
      ...behindAndBelow(sizes, front, piece),
      ...(sizes.case.hasFrame ? railsCut(sizes, front, piece) : []),
    ],
  };
  return onPlinth(sizes, own, plinthSection(sizes, front, piece));
}

/** What is seen of the left side over the top, where the sides run past it. */
function sideOver(sizes: Sizes, front: Length, piece: Make): readonly DrawnPiece[] {
  const h = pastTop(sizes.case);
  if (isZero(h)) return [];
  const at = { x: front, y: subtract(sizes.height.value, h), w: flatWide(sizes, 'top').value, h };
  return [piece('left', at, 'loose')];
}

/** Bottom, top and fixed shelves, cut through. */
function levels(sizes: Sizes, front: Length, piece: Make): readonly DrawnPiece[] {
  const { case: c, thick, inner, datum, clearHeight } = sizes;
  const level = (role: string, y: Length, h: Length, w = inner.value) => piece(role, { x: front, y, w, h });
  const flat = (role: 'bottom' | 'top', y: Length) =>
    level(role, y, thick(role), flatWide(sizes, role).value);
  return [
    flat('bottom', c.feet ?? zero),
    ...(c.hasTop ? [flat('top', add(datum.value, clearHeight.value))] : []),
    ...c.inside
      .filter((i) => i.kind === 'fixed')
      .map((i) => level(i.id, add(datum.value, i.at ?? zero), thick('shelf'))),
  ];
}

function behindAndBelow(sizes: Sizes, front: Length, piece: Make): readonly DrawnPiece[] {
  const back = backAt(sizes);
  return [
    ...(back ? [piece('back', { ...back, x: add(front, back.x) }, 'back')] : []),
    ...toeSection(sizes, front, piece),
    ...stopsCut(sizes, front, piece),
    ...nailersAt(sizes).map((at) => piece('nailer', { ...at, x: add(front, at.x) })),
  ];
}

function railsCut(sizes: Sizes, front: Length, piece: Make): readonly DrawnPiece[] {
  const f = frameOf(sizes);
  const top = sum([f.lowEnd, f.height.value, negate(f.pieces.top)]);
  return [
    piece('railbottom', { x: zero, y: f.railLow, w: front, h: f.pieces.bottom }, 'frame'),
    piece('railtop', { x: zero, y: top, w: front, h: f.pieces.top }, 'frame'),
  ];
}
