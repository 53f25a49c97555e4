import { type BoardProps, Cross, type DrawnGroove } from './boards';

type LyingProps = BoardProps & {
  /** A rabbet along the far edge, as a share of the board's width. */
  readonly edge?: number;
  /** A notch out of the near edge at the block: shares of the board's width and length. */
  readonly corner?: { readonly deep: number; readonly long: number } | undefined;
  /** Grooves along the board: how far from that edge and how wide, as shares of the board's width. */
  readonly along?: readonly { readonly near: number; readonly wide: number }[];
  readonly holes?: readonly DrawnHole[];
};

/** A hole: its middle along the board, and as a share of its width from the near edge; of the other face dashed. */
export type DrawnHole = {
  readonly id: string;
  readonly at: number;
  readonly across: number;
  readonly dia: number;
  readonly behind: boolean;
};

/** The board lying down, reference end left against the blue block, red near edges, an X in each waste. */
export function BoardLying({
  length,
  grooves,
  label,
  stale,
  edge = 0,
  along = [],
  corner,
  holes = [],
}: LyingProps) {
  const scale = 343 / Math.max(length, 0.001);
  return (
    <svg class={stale ? 'lying stale' : 'lying rests'} viewBox="0 -8 356 66" role="img" aria-label={label}>
      <rect class="f-birch" x="10" y="0" width="343" height="50" />
      {edge > 0 && (
        <rect class="f-notch" x="10" y="0" width="343" height={50 * Math.min(1, edge)} opacity=".5" />
      )}
      {corner && (
        <rect
          class="f-notch"
          x="10"
          y={50 * (1 - corner.deep)}
          width={343 * corner.long}
          height={50 * corner.deep}
        />
      )}
      {along.map(({ near, wide }) => (
        <rect key={near} class="f-notch" x="10" y={50 * near} width="343" height={50 * wide} opacity=".5" />
      ))}
      {grooves.map((g) => (
        <LyingGroove key={g.id} x={10 + g.near * scale} w={g.width * scale} groove={g} />
      ))}
      {holes.map((hole) => (
        <circle
          key={hole.id}
          class="hole k-onbirch"
          cx={10 + hole.at * scale}
          cy={50 - 50 * hole.across}
          r={Math.max(1.2, (hole.dia * scale) / 2)}
          stroke-width="1"
          stroke-dasharray={hole.behind ? '1 1' : undefined}
        />
      ))}
      <rect class="k-onbirch" x="10" y="0" width="343" height="50" stroke-width="1.5" />
      <rect class="f-blue" x="0" y="-6" width="10" height="62" />
    </svg>
  );
}

type LyingGrooveProps = { readonly x: number; readonly w: number; readonly groove: DrawnGroove };

function LyingGroove({ x, w, groove }: LyingGrooveProps) {
  if (groove.behind) {
    return (
      <rect class="k-onbirch" x={x} y="3" width={w} height="44" stroke-width="1.25" stroke-dasharray="3 3" />
    );
  }
  return (
    <>
      <rect class="f-notch" x={x} y="0" width={w} height="50" opacity={groove.done ? 1 : 0.5} />
      <line class="k-red" x1={x} x2={x} y1="-5" y2="50" stroke-width={groove.current ? 4 : 2.5} />
      <line class="k-onbirch" x1={x + w} x2={x + w} y1="0" y2="50" stroke-width="1" />
      {!groove.done && w >= 3 && <Cross x={x + w / 2} y={25} reach={Math.min(w * 0.36, 6)} />}
    </>
  );
}
