import './side-end.css';

/** One side of a drawer from above, in plain numbers: for pictures only. */
type CornerProps = {
  readonly front: number;
  /** How far the front stands past the side. */
  readonly past: number;
  /** Left of the front over the end of the side. */
  readonly lap: number;
  readonly side: number;
  readonly back: number;
  readonly dado: number;
  readonly behind: number;
  readonly dowels?: { readonly front: Dowel; readonly back: Dowel; readonly over: boolean };
  readonly label: string;
};

type Dowel = { readonly thick: number; readonly inFace: number; readonly inEdge: number };

const box = { width: 358, height: 150, end: 340 };

/** Front at the left, back at the right, the side along the top, broken in the middle. */
export function CornerDrawing({ front, past, lap, side, back, dado, behind, dowels, label }: CornerProps) {
  const scale = 120 / Math.max(front + side + past, back + behind, 0.01);
  const s = (x: number) => x * Math.min(scale, 80);
  const left = 18;
  const top = 6 + s(past);
  /** A dowel into the face of the side. */
  const across = (dowel: Dowel, middle: number) => (
    <rect
      class="groovedraw"
      x={middle - s(dowel.thick / 2)}
      y={top + s(side - dowel.inFace)}
      width={s(dowel.thick)}
      height={s(dowel.inFace + dowel.inEdge)}
    />
  );
  const backAt = box.end - s(behind + back);
  const face = `M${left} 6H${left + s(lap)}V${top + s(side)}H${left + s(front)}V${box.height}H${left}z`;
  return (
    <svg class="taildraw" viewBox={`0 0 ${box.width} ${box.height + 6}`} role="img" aria-label={label}>
      <path class="wood pins" stroke-width="1.5" d={face} />
      <rect
        class="wood"
        x={left + s(lap)}
        y={top}
        width={Math.max(0, 178 - left - s(lap))}
        height={s(side)}
        stroke-width="1.5"
      />
      <rect class="wood" x="186" y={top} width={box.end - 186} height={s(side)} stroke-width="1.5" />
      <rect
        class="wood pins"
        x={backAt}
        y={top + s(side - dado)}
        width={s(back)}
        height={box.height - top - s(side - dado)}
        stroke-width="1.5"
      />
      {dowels?.over && (
        <rect
          class="groovedraw"
          x={left + s(front - dowels.front.inFace)}
          y={top + s((side - dowels.front.thick) / 2)}
          width={s(dowels.front.inFace + dowels.front.inEdge)}
          height={s(dowels.front.thick)}
        />
      )}
      {dowels && !dowels.over && across(dowels.front, left + s(front / 2))}
      {dowels && across(dowels.back, backAt + s(back / 2))}
    </svg>
  );
}
