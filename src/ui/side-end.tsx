import type { ComponentChildren } from 'preact';
import './side-end.css';

const room = 250;

/** Where the joint of a picture of a side begins, picture units across. */
const base = 240;
const left = 20;

/** The scale of a side laid down, and what stands where on it. Heights up from its lower edge, in plain numbers. */
type SideEnd = {
  readonly h: number;
  readonly base: number;
  readonly deep: number;
  readonly y: (up: number) => number;
  readonly tall: (height: number) => number;
};

/** @param long how far the joint reaches past its baseline */
export function sideEnd(height: number, long: number): SideEnd {
  const scale = Math.min(room / Math.max(height, 0.01), 90);
  const tall = (x: number) => x * scale;
  return { h: tall(height), base, deep: tall(long), y: (up) => tall(height - up), tall };
}

/** A side of a drawer at its front end, laid down: the side going on to the left, its baseline red. */
export function SideEndDrawing({
  at: { h },
  label,
  children,
}: {
  readonly at: SideEnd;
  readonly label: string;
  readonly children: ComponentChildren;
}) {
  return (
    <svg class="taildraw" viewBox={`0 -6 358 ${h + 12}`} role="img" aria-label={label}>
      {children}
      <line class="k-red" x1={base} x2={base} y1="-5" y2={h + 5} stroke-width="1.5" />
    </svg>
  );
}

type BandProps = {
  readonly at: SideEnd;
  readonly up: number;
  readonly wide: number;
  /** In the joint alone, or along the whole side. */
  readonly inJoint?: boolean;
  readonly wrong?: boolean;
};

/** The groove for the bottom. */
export function GrooveBand({ at: { deep, y, tall }, up, wide, inJoint, wrong }: BandProps) {
  return (
    <rect
      class={wrong ? 'groovedraw wrong' : 'groovedraw'}
      x={inJoint ? base : left}
      y={y(up + wide)}
      width={inJoint ? deep : base - left + deep}
      height={Math.max(1, tall(wide))}
    />
  );
}
