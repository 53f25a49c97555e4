/** A door in a room from above: plain numbers, for pictures only. */
export type DoorDrawn = {
  /** `back` is the wall at the top, where the case stands; `front` faces it. */
  readonly wall: 'left' | 'right' | 'front' | 'back';
  /** From the left, or at the sides from the back wall. */
  readonly from: number;
  readonly width: number;
  /** Its leaf and where that is hung; none where it was not said. */
  readonly leaf?: { readonly long: number; readonly hung: 'begin' | 'end'; readonly opens: 'in' | 'out' };
};

type At = readonly [x: number, y: number];
type RoomDrawn = { readonly wide: number; readonly deep: number };

/** A point of a wall so far along it and so far out into the room. */
const onWall = ({ wide, deep }: RoomDrawn, wall: DoorDrawn['wall'], along: number, out: number): At => {
  switch (wall) {
    case 'left':
      return [out, along];
    case 'right':
      return [wide - out, along];
    case 'back':
      return [along, out];
    case 'front':
      return [along, deep - out];
  }
};

/** The opening, and the leaf open at a right angle with the way its edge goes there. */
function doorPoints(room: RoomDrawn, { wall, from, width, leaf }: DoorDrawn) {
  const at = (along: number, out: number): At => onWall(room, wall, along, out);
  const opening = { begin: at(from, 0), end: at(from + width, 0) };
  if (!leaf) return { opening };
  const hinge = leaf.hung === 'begin' ? from : from + width;
  const shut = leaf.hung === 'begin' ? hinge + leaf.long : hinge - leaf.long;
  const out = leaf.opens === 'in' ? leaf.long : -leaf.long;
  return { opening, leaf: { hinge: at(hinge, 0), shut: at(shut, 0), open: at(hinge, out), long: leaf.long } };
}

/** Every point a door reaches, so that all of it is in the picture. */
export const doorReaches = (room: RoomDrawn, door: DoorDrawn): readonly At[] => {
  const { opening, leaf } = doorPoints(room, door);
  return [opening.begin, opening.end, ...(leaf ? [leaf.shut, leaf.open] : [])];
};

type DrawingProps = {
  readonly room: RoomDrawn;
  readonly door: DoorDrawn;
  /** Where a point of the room lies in the picture, and how long an inch is there. */
  readonly place: (at: At) => At;
  readonly scale: number;
};

/** A door from above: a gap in its wall, the leaf open, and the quarter circle its edge goes. */
export function DoorDrawing({ room, door, place, scale }: DrawingProps) {
  const { opening, leaf } = doorPoints(room, door);
  const [begin, end] = [place(opening.begin), place(opening.end)];
  if (!leaf) return <path class="gap" d={`M${begin}L${end}`} />;
  const [hinge, shut, open] = [place(leaf.hinge), place(leaf.shut), place(leaf.open)];
  const r = leaf.long * scale;
  const turns = (shut[0] - hinge[0]) * (open[1] - hinge[1]) - (shut[1] - hinge[1]) * (open[0] - hinge[0]);
  return (
    <>
      <path class="gap" d={`M${begin}L${end}`} />
      <path class="swing k-ink" d={`M${shut}A${r} ${r} 0 0 ${turns > 0 ? 1 : 0} ${open}`} />
      <path class="k-ink" d={`M${hinge}L${open}`} stroke-width="2.5" />
    </>
  );
}
