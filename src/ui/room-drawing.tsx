import './room-drawing.css';

/** A point of a wall: over the floor, and how far out of plumb, to the right. Plain numbers, for pictures only. */
export type WallPoint = { readonly up: number; readonly out: number };

/** A case as it stands, from the left line. */
type Standing = { readonly from: number; readonly wide: number; readonly high: number };

type RoomDrawingProps = {
  /** Between the lines, and floor to ceiling. */
  readonly wide: number;
  readonly high: number;
  readonly left: readonly WallPoint[];
  readonly right: readonly WallPoint[];
  readonly stands?: Standing | undefined;
  readonly label: string;
  /** Figures written along the width and the height. */
  readonly across: string;
  readonly up: string;
};

const box = { width: 358, height: 230, side: 50, foot: 26 };
/** How much more than to scale a wall is drawn out of plumb. */
const outOfScale = 10;

/** The room from the front, to scale; how far its walls are out of plumb is drawn tenfold. */
export function RoomDrawing({ wide, high, left, right, stands, label, across, up }: RoomDrawingProps) {
  const most = Math.max(0, ...[...left, ...right].map(({ out }) => Math.abs(out))) * outOfScale;
  const scale = Math.min((box.width - box.side) / (wide + 2 * most), (box.height - box.foot) / high);
  const [w, h] = [wide * scale, high * scale];
  const x0 = (box.width - box.side - w) / 2;
  const wall = (points: readonly WallPoint[], at: number): string =>
    points
      .map(({ up: y, out }, k) => `${k === 0 ? 'M' : 'L'}${at + out * outOfScale * scale} ${h - y * scale}`)
      .join('');
  return (
    <svg
      class="roomdraw rests"
      viewBox={`0 -4 ${box.width} ${h + box.foot + 8}`}
      role="img"
      aria-label={label}
    >
      {stands && (
        <rect
          class="f-birch"
          x={x0 + stands.from * scale}
          y={h - stands.high * scale}
          width={stands.wide * scale}
          height={stands.high * scale}
        />
      )}
      <path class="k-blue" d={`M${x0} 0V${h}M${x0 + w} 0V${h}`} stroke-dasharray="4 4" />
      <path class="k-ink" d={`M${x0 - 8} ${h}h${w + 16}M${x0 - 8} 0h${w + 16}`} stroke-width="2" />
      <path class="k-ink" d={wall(left, x0)} stroke-width="3" />
      <path class="k-ink" d={wall(right, x0 + w)} stroke-width="3" />
      <text class="dim" x={x0 + w / 2} y={h + 20} text-anchor="middle">
        {across}
      </text>
      <text
        class="dim"
        transform={`translate(${x0 + w + most * scale + 38} ${h / 2}) rotate(-90)`}
        text-anchor="middle"
      >
        {up}
      </text>
    </svg>
  );
}
