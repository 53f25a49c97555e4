import { DoorDrawing, type DoorDrawn, doorReaches } from './door-drawing';
import './plan-drawing.css';

/** Plain numbers, for pictures only. */
type PlanDrawingProps = {
  /** Between the side walls, where they stand nearest. */
  readonly wide: number;
  /** From the back wall to the one that faces it, where it was read. */
  readonly faces?: number | undefined;
  /** How far each side wall comes in over so much depth; below 0 it goes away; none where its corner was not read. */
  readonly comesIn: { readonly left?: number | undefined; readonly right?: number | undefined };
  readonly stands: { readonly from: number; readonly wide: number; readonly deep: number };
  /** The sides a strip is fitted at. */
  readonly strips: readonly ('left' | 'right')[];
  readonly doors: readonly DoorDrawn[];
  readonly label: string;
  /** How deep the case stands, written in it. */
  readonly deep: string;
};

/** Without a door a plan is as high as it comes to; with one it stays within `high`. */
const box = { width: 358, edge: 10, foot: 10, high: 300 };
/** How much more than to scale a side wall is drawn out of square. */
const outOfScale = 10;
/** How far the side walls are drawn past the case. */
const past = 1.35;
const stripDeep = 0.75;

/** How far the picture reaches in inches of the room, and what it is drawn to. */
function frameOf({ wide, faces, comesIn, stands, doors }: PlanDrawingProps) {
  const drawn = stands.deep * past;
  const inBy = (side: 'left' | 'right') => (comesIn[side] ?? 0) * outOfScale * past;
  const room = { wide, deep: faces ?? 0 };
  const reached = doors.flatMap((door) => doorReaches(room, door));
  const [xs, ys] = [reached.map(([x]) => x), reached.map(([, y]) => y)];
  const deep = Math.max(drawn, ...ys.map((y) => y + 2), doors.length > 0 ? (faces ?? 0) : 0);
  const low = { x: Math.min(0, inBy('left'), ...xs), y: Math.min(0, ...ys) };
  const high = { x: Math.max(wide, wide - inBy('right'), ...xs), y: deep };
  const within = (box.width - 2 * box.edge) / (high.x - low.x);
  const scale = doors.length > 0 ? Math.min(within, box.high / (high.y - low.y)) : within;
  const left = (box.width - (high.x - low.x) * scale) / 2;
  const x = (at: number): number => left + (at - low.x) * scale;
  const y = (at: number): number => box.edge + (at - low.y) * scale;
  return { room, drawn, deep, scale, x, y, inBy, foot: y(high.y) };
}

type Frame = ReturnType<typeof frameOf>;

/** Back wall and side walls as far as they are drawn, and the one that faces the case where a door needs it. */
function walls({ x, y, inBy, drawn, deep }: Frame, { wide, faces, doors }: PlanDrawingProps): string {
  const [left, right] = [x(inBy('left')), x(wide - inBy('right'))];
  const closes = faces !== undefined && doors.length > 0 ? `M${left} ${y(faces)}H${right}` : '';
  return `M${left} ${y(deep)}V${y(drawn)}L${x(0)} ${y(0)}H${x(wide)}L${right} ${y(drawn)}V${y(deep)}${closes}`;
}

/** How much farther in than to scale a side wall is drawn so far from the back one: a door in it stands in its line. */
function shifted({ inBy, drawn }: Frame, { wall, from, width }: DoorDrawn): number {
  if (wall !== 'left' && wall !== 'right') return 0;
  const over = inBy(wall) * Math.min(1, (from + width / 2) / drawn);
  return wall === 'left' ? over : -over;
}

/** A room from above, the back wall at the top: case, strips and doors to scale, corners out of square tenfold. */
export function PlanDrawing(props: PlanDrawingProps) {
  const { wide, stands, strips, doors, label, deep } = props;
  const frame = frameOf(props);
  const { room, scale, x, y, foot } = frame;
  const right = stands.from + stands.wide;
  const strip = (from: number, to: number) => (
    <rect
      class="fitted"
      x={x(from)}
      y={y(stands.deep - stripDeep)}
      width={Math.max(0, to - from) * scale}
      height={stripDeep * scale}
    />
  );
  return (
    <svg class="plandraw rests" viewBox={`0 0 ${box.width} ${foot + box.foot}`} role="img" aria-label={label}>
      <rect
        class="f-birch"
        x={x(stands.from)}
        y={y(0)}
        width={stands.wide * scale}
        height={stands.deep * scale}
      />
      {strips.includes('left') && strip(0, stands.from)}
      {strips.includes('right') && strip(right, wide)}
      <path class="k-ink" d={walls(frame, props)} stroke-width="3" />
      {doors.map((door, k) => (
        <DoorDrawing
          key={k}
          {...{ room, door, scale }}
          place={([atX, atY]) => [x(atX + shifted(frame, door)), y(atY)]}
        />
      ))}
      <text class="dim" x={x(stands.from + stands.wide / 2)} y={y(stands.deep / 2) + 8}>
        {deep}
      </text>
    </svg>
  );
}
