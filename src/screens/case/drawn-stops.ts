import { add, type Length, zero } from '../../length/length';
import type { Inside } from '../../trade/carcass/case';
import { bayStart, type Sizes } from '../../trade/carcass/sizes';
import { stopBack, stopWide } from '../../trade/carcass/stops';
import type { DrawnPiece } from '../../ui/case-drawing';

type Make = (
  role: string,
  at: { readonly x: Length; readonly y: Length; readonly w: Length; readonly h: Length },
) => DrawnPiece;

/** Every stop strip, and how high it stands. */
const stops = ({
  case: c,
  datum,
}: Sizes): readonly { readonly i: Inside; readonly y: Length; readonly h: Length }[] =>
  c.inside
    .filter((i) => i.kind === 'stop')
    .map((i) => ({ i, y: add(datum.value, i.at ?? zero), h: stopWide(c, i) }));

/** Stop strips from the front: across their bays. */
export const stopsFront = (sizes: Sizes, piece: Make): readonly DrawnPiece[] =>
  stops(sizes).map(({ i, y, h }) =>
    piece(i.id, {
      x: add(sizes.thick('side'), bayStart(sizes, i.bay)),
      y,
      w: sizes.bays[i.bay - 1]?.value ?? zero,
      h,
    }),
  );

/** Stop strips cut through, `front` being what stands before the sides in the drawing. */
export const stopsCut = (sizes: Sizes, front: Length, piece: Make): readonly DrawnPiece[] =>
  stops(sizes).map(({ i, y, h }) =>
    piece(i.id, { x: add(front, stopBack(sizes.case, i)), y, w: sizes.thick('stop'), h }),
  );
