import './tail-drawing.css';

/** A side of a drawer at its front end, in plain numbers: for pictures only. Heights up from its lower edge. */
type TailProps = {
  readonly height: number;
  readonly long: number;
  readonly tails: readonly {
    readonly near: number;
    readonly far: number;
    readonly baseNear: number;
    readonly baseFar: number;
  }[];
  readonly groove?: { readonly up: number; readonly wide: number; readonly clear: boolean };
  readonly label: string;
};

const box = { width: 358, height: 250 };

/** The joint laid down: tails to the right, the side going on to the left, the groove for the bottom across both. */
export function TailDrawing({ height, long, tails, groove, label }: TailProps) {
  const scale = Math.min(box.height / Math.max(height, 0.01), 90);
  const deep = long * scale;
  const base = 240;
  const y = (up: number) => (height - up) * scale;
  const h = height * scale;
  return (
    <svg class="taildraw" viewBox={`0 -6 ${box.width} ${h + 12}`} role="img" aria-label={label}>
      <rect class="wood" x="20" y="0" width={base - 20} height={h} stroke-width="1.5" />
      <rect class="wood pins" x={base} y="0" width={deep} height={h} stroke-width="1.5" />
      {tails.map((t, k) => (
        <path
          key={k}
          class="wood"
          stroke-width="1.5"
          d={`M${base} ${y(t.baseNear)}L${base + deep} ${y(t.near)}V${y(t.far)}L${base} ${y(t.baseFar)}z`}
        />
      ))}
      {groove && (
        <rect
          class={groove.clear ? 'groovedraw' : 'groovedraw wrong'}
          x="20"
          y={y(groove.up + groove.wide)}
          width={base - 20 + deep}
          height={Math.max(1, groove.wide * scale)}
        />
      )}
      <line class="k-red" x1={base} x2={base} y1="-5" y2={h + 5} stroke-width="1.5" />
    </svg>
  );
}
