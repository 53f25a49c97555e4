import './wall-drawing.css';

/** A stretch along the wall; plain numbers, for pictures only. */
type Stretch = { readonly from: number; readonly to: number };

type WallDrawingProps = {
  readonly cleat: Stretch;
  readonly zones: readonly (Stretch & { readonly what: string })[];
  /** Centres, and how thick one is. */
  readonly fix: readonly number[];
  readonly refused: readonly number[];
  readonly stud: number;
  readonly label: string;
};

const box = { width: 358, height: 150, edge: 12 };
const cleatAt = { y: 52, high: 22 };

/** A wall from the front: studs, the cleat over them, zones hatched, a cross where a screw goes. */
export function WallDrawing({ cleat, zones, fix, refused, stud, label }: WallDrawingProps) {
  const all = [cleat.from, cleat.to, ...zones.flatMap(({ from, to }) => [from, to]), ...fix, ...refused];
  const [from, to] = [Math.min(...all) - stud, Math.max(...all) + stud];
  const scale = (box.width - 2 * box.edge) / Math.max(to - from, 0.01);
  const x = (at: number): number => box.edge + (at - from) * scale;
  return (
    <svg class="walldraw rests" viewBox={`0 0 ${box.width} ${box.height}`} role="img" aria-label={label}>
      <defs>
        <pattern id="nofasten" width="8" height="8" patternUnits="userSpaceOnUse">
          <path class="k-red" d="M0 8L8 0" stroke-width="1.75" />
        </pattern>
      </defs>
      {[...fix, ...refused].map((at) => (
        <rect key={at} class="stud" x={x(at - stud / 2)} y="0" width={stud * scale} height="120" />
      ))}
      <rect
        class="f-birch cleat"
        x={x(cleat.from)}
        y={cleatAt.y}
        width={(cleat.to - cleat.from) * scale}
        height={cleatAt.high}
      />
      {zones.map((zone, k) => (
        <rect
          key={k}
          class="zone"
          x={x(zone.from)}
          y="0"
          width={Math.max(2, (zone.to - zone.from) * scale)}
          height="120"
          fill="url(#nofasten)"
        />
      ))}
      {fix.map((at, k) => (
        <g key={at}>
          <path class="k-ink" d={`M${x(at) - 6} ${cleatAt.y + 5}l12 12m0 -12l-12 12`} stroke-width="3" />
          <text class="dim" x={x(at)} y="142" text-anchor="middle">
            {k + 1}
          </text>
        </g>
      ))}
    </svg>
  );
}
