import './case-drawing.css';

/** A piece as drawn: from the left and the floor, in plain numbers; for pictures only. */
export type DrawnPiece = {
  readonly part: string;
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly kind: 'ply' | 'frame' | 'groove' | 'back' | 'toe' | 'loose' | 'hole' | 'strip';
  /** Its outline where that is no rectangle: corners from its left and lower edge, in the same numbers. */
  readonly outline?: readonly (readonly [x: number, y: number])[];
  /** Which of its kind, written beside it. */
  readonly no?: number;
};

type DrawingProps = {
  readonly wide: number;
  readonly high: number;
  readonly pieces: readonly DrawnPiece[];
  readonly label: string;
  /** Figures written along the width and the height. */
  readonly across: string;
  readonly up: string;
  readonly stale?: boolean;
  /** Opens a part; the list of parts beside the drawing does the same. */
  readonly onPart?: (part: string) => void;
};

const box = { width: 358, height: 300, side: 46, foot: 26 };

/** A case to scale, from the front or cut through: wood in birch, the floor a line, the outside sizes along it. */
export function CaseDrawing({ wide, high, pieces, label, across, up, stale, onPart }: DrawingProps) {
  const scale = Math.min(
    (box.width - box.side) / Math.max(wide, 0.01),
    (box.height - box.foot) / Math.max(high, 0.01),
  );
  const [w, h] = [wide * scale, high * scale];
  const left = (box.width - box.side - w) / 2;
  return (
    <svg
      class={stale ? 'casedraw stale' : 'casedraw rests'}
      viewBox={`0 -4 ${box.width} ${h + box.foot + 8}`}
      role="img"
      aria-label={label}
    >
      {pieces.map((p, k) => (
        <Drawn
          key={k}
          kind={p.kind}
          outline={p.outline?.map(([x, y]) => `${left + (p.x + x) * scale},${h - (p.y + y) * scale}`)}
          no={p.no}
          {...boxOf(p, { scale, left, h })}
          onTap={() => onPart?.(p.part)}
        />
      ))}
      <Sizes left={left} w={w} h={h} across={across} up={up} />
    </svg>
  );
}

/** Where a piece is drawn, pixels; a hole that would be too small to see is drawn wider, about its middle. */
function boxOf(
  p: DrawnPiece,
  { scale, left, h }: { readonly scale: number; readonly left: number; readonly h: number },
) {
  const least = p.kind === 'hole' ? 1.6 : 0.5;
  const [wide, high] = [Math.max(least, p.w * scale), Math.max(least, p.h * scale)];
  const more = p.kind === 'hole' ? (wide - p.w * scale) / 2 : 0;
  return { x: left + p.x * scale - more, y: h - (p.y + p.h) * scale - more, w: wide, h: high };
}

type DrawnProps = Pick<DrawnPiece, 'x' | 'y' | 'w' | 'h' | 'kind'> & {
  readonly no: number | undefined;
  /** Corners, pixels. */
  readonly outline: readonly string[] | undefined;
  readonly onTap: () => void;
};

/** One piece, pixels: solid wood with its grain along it. */
const Drawn = ({ x, y, w, h, kind, no, outline, onTap }: DrawnProps) => (
  <>
    {outline ? (
      <polygon class={fills[kind]} points={outline.join(' ')} stroke-width="1" onClick={onTap} />
    ) : (
      <rect
        class={fills[kind]}
        x={x}
        y={y}
        width={w}
        height={h}
        rx={kind === 'hole' ? w / 2 : 0}
        stroke-width="1"
        onClick={onTap}
      />
    )}
    {kind === 'frame' && <path class="grain" d={grainOf(x, y, w, h)} stroke-width="0.75" />}
    {no !== undefined && (
      <text class="dim" x={x + 6} y={y - 4}>
        {no}
      </text>
    )}
  </>
);

/** Two lines of grain the long way, where they can be told apart. */
function grainOf(x: number, y: number, w: number, h: number): string {
  if (Math.min(w, h) < 5) return '';
  const at = (share: number, along: number, from: number) =>
    h > w
      ? `M${x + w * share} ${y + h * from}v${h * along}`
      : `M${x + w * from} ${y + h * share}h${w * along}`;
  return `${at(0.33, 0.55, 0.05)}${at(0.66, 0.5, 0.42)}`;
}

type SizesProps = Pick<DrawingProps, 'across' | 'up'> & {
  readonly left: number;
  readonly w: number;
  readonly h: number;
};

/** The floor, and the outside sizes along width and height. */
const Sizes = ({ left, w, h, across, up }: SizesProps) => (
  <>
    <line class="k-ink" x1={left - 8} x2={left + w + 8} y1={h} y2={h} stroke-width="2" />
    <path
      class="k-ink"
      d={`M${left} ${h + 5}v6M${left + w} ${h + 5}v6M${left} ${h + 8}h${w}`}
      stroke-width="1.25"
    />
    <text class="dim" x={left + w / 2} y={h + 25} text-anchor="middle">
      {across}
    </text>
    <path
      class="k-ink"
      d={`M${left + w + 6} 0h6M${left + w + 6} ${h}h6M${left + w + 9} 0v${h}`}
      stroke-width="1.25"
    />
    <text class="dim" transform={`translate(${left + w + 26} ${h / 2}) rotate(-90)`} text-anchor="middle">
      {up}
    </text>
  </>
);

const fills: Record<DrawnPiece['kind'], string> = {
  ply: 'f-birch',
  frame: 'f-birch2 through',
  groove: 'f-birch2',
  back: 'f-birch2',
  toe: 'f-birch through',
  loose: 'f-birch loose',
  hole: 'f-ink2 held',
  strip: 'f-ink2 held through',
};
