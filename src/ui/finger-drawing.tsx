import { GrooveBand, SideEndDrawing, sideEnd } from './side-end';

/** A side of a drawer at its front end, in plain numbers: for pictures only. Heights up from its lower edge. */
type FingerProps = {
  readonly height: number;
  readonly long: number;
  readonly slots: readonly { readonly near: number; readonly far: number }[];
  /** Stopped in the front: it does not show in the fingers of the front that fill the slots. */
  readonly groove: { readonly up: number; readonly wide: number; readonly stopped: boolean };
  readonly label: string;
};

/** The side laid down: its fingers to the right, those of the front in its slots, the groove for the bottom across. */
export function FingerDrawing({ height, long, slots, groove: { stopped, ...groove }, label }: FingerProps) {
  const at = sideEnd(height, long);
  const { base, deep } = at;
  return (
    <SideEndDrawing at={at} label={label}>
      <rect class="wood" x="20" y="0" width={base - 20 + deep} height={at.h} stroke-width="1.5" />
      <GrooveBand at={at} {...groove} />
      {slots.map(({ near, far }) => (
        <rect
          key={near}
          class="wood pins"
          x={base}
          y={at.y(far)}
          width={deep}
          height={at.tall(far - near)}
          stroke-width="1.5"
        />
      ))}
      {!stopped && <GrooveBand at={at} {...groove} inJoint />}
    </SideEndDrawing>
  );
}
