import './plan-drawing.css';

/** Plain numbers, for pictures only. */
type PlanDrawingProps = {
  /** Between the side walls, where they stand nearest. */
  readonly wide: number;
  /** How far each side wall comes in over so much depth; below 0 it goes away; none where its corner was not read. */
  readonly comesIn: { readonly left?: number | undefined; readonly right?: number | undefined };
  readonly stands: { readonly from: number; readonly wide: number; readonly deep: number };
  /** The sides a strip is fitted at. */
  readonly strips: readonly ('left' | 'right')[];
  readonly label: string;
  /** How deep the case stands, written in it. */
  readonly deep: string;
};

const box = { width: 358, edge: 10, foot: 10 };
/** How much more than to scale a side wall is drawn out of square. */
const outOfScale = 10;
/** How far the side walls are drawn past the case. */
const past = 1.35;
const stripDeep = 0.75;

/** A room from above, the back wall at the top: the case and its strips to scale, corners out of square tenfold. */
export function PlanDrawing({ wide, comesIn, stands, strips, label, deep }: PlanDrawingProps) {
  const [inLeft, inRight] = [comesIn.left ?? 0, comesIn.right ?? 0].map((x) => x * outOfScale * past);
  const away = Math.max(0, -(inLeft ?? 0), -(inRight ?? 0));
  const scale = (box.width - 2 * box.edge) / (wide + 2 * away);
  const x = (at: number): number => box.edge + (away + at) * scale;
  const foot = box.edge + stands.deep * past * scale;
  const right = stands.from + stands.wide;
  const front = box.edge + (stands.deep - stripDeep) * scale;
  const strip = (from: number, to: number) => (
    <rect
      class="fitted"
      x={x(from)}
      y={front}
      width={Math.max(0, to - from) * scale}
      height={stripDeep * scale}
    />
  );
  return (
    <svg class="plandraw rests" viewBox={`0 0 ${box.width} ${foot + box.foot}`} role="img" aria-label={label}>
      <rect
        class="f-birch"
        x={x(stands.from)}
        y={box.edge}
        width={stands.wide * scale}
        height={stands.deep * scale}
      />
      {strips.includes('left') && strip(0, stands.from)}
      {strips.includes('right') && strip(right, wide)}
      <path
        class="k-ink"
        d={`M${x(inLeft ?? 0)} ${foot}L${x(0)} ${box.edge}H${x(wide)}L${x(wide - (inRight ?? 0))} ${foot}`}
        stroke-width="3"
      />
      <text class="dim" x={x(stands.from + stands.wide / 2)} y={box.edge + (stands.deep * scale) / 2 + 8}>
        {deep}
      </text>
    </svg>
  );
}
