import { GrooveBand, SideEndDrawing, sideEnd } from './side-end';

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

/** The joint laid down: tails to the right, the side going on to the left, the groove for the bottom across both. */
export function TailDrawing({ height, long, tails, groove, label }: TailProps) {
  const at = sideEnd(height, long);
  const { base, deep, y } = at;
  return (
    <SideEndDrawing at={at} label={label}>
      <rect class="wood" x="20" y="0" width={base - 20} height={at.h} stroke-width="1.5" />
      <rect class="wood pins" x={base} y="0" width={deep} height={at.h} stroke-width="1.5" />
      {tails.map((t, k) => (
        <path
          key={k}
          class="wood"
          stroke-width="1.5"
          d={`M${base} ${y(t.baseNear)}L${base + deep} ${y(t.near)}V${y(t.far)}L${base} ${y(t.baseFar)}z`}
        />
      ))}
      {groove && <GrooveBand at={at} up={groove.up} wide={groove.wide} wrong={!groove.clear} />}
    </SideEndDrawing>
  );
}
