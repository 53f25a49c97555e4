import './feet-drawing.css';

/** A foot: which column from the left and which row from the back, and what is written by it. */
type DrawnFoot = {
  readonly column: number;
  readonly row: number;
  readonly text: string;
  /** It stands on the high point. */
  readonly high: boolean;
};

type FeetDrawingProps = {
  readonly wide: number;
  readonly deep: number;
  readonly columns: number;
  readonly rows: number;
  readonly feet: readonly DrawnFoot[];
  readonly label: string;
  /** Written under its front. */
  readonly front: string;
};

/** From an edge of the case to the middle of a foot. */
const edge = 34;

const box = { width: 358, edge: 8, least: 150, most: 220 };

/** What is written by a foot at either end stays within the case. */
function beside(column: number, columns: number, { x, w }: { readonly x: number; readonly w: number }) {
  if (columns > 1 && column === 0) return { x: box.edge + 10, 'text-anchor': 'start' } as const;
  if (columns > 1 && column === columns - 1) return { x: box.edge + w - 10, 'text-anchor': 'end' } as const;
  return { x, 'text-anchor': 'middle' } as const;
}

/** A case seen from above, to scale, its front below: at every foot what goes under it. */
export function FeetDrawing({ wide, deep, columns, rows, feet, label, front }: FeetDrawingProps) {
  const w = box.width - 2 * box.edge;
  const h = Math.min(box.most, Math.max(box.least, (deep / Math.max(wide, 0.01)) * w));
  const place = (k: number, of: number, size: number): number =>
    of < 2 ? size / 2 : edge + (k * (size - 2 * edge)) / (of - 1);
  return (
    <svg class="feetdraw rests" viewBox={`0 0 ${box.width} ${h + 30}`} role="img" aria-label={label}>
      <rect class="f-birch case" x={box.edge} y="4" width={w} height={h} />
      <path class="k-ink" d={`M${box.edge} ${h + 4}h${w}`} stroke-width="4" />
      <text class="front" x={box.width / 2} y={h + 25} text-anchor="middle">
        {front}
      </text>
      {feet.map(({ column, row, text, high }) => {
        const [x, y] = [box.edge + place(column, columns, w), 4 + place(row, rows, h)];
        const below = row === rows - 1;
        return (
          <g key={`${column} ${row}`}>
            <circle class={high ? 'f-blue' : 'f-ink'} cx={x} cy={y} r="9" />
            <text class="dim" {...beside(column, columns, { x, w })} y={below ? y - 17 : y + 33}>
              {text}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
