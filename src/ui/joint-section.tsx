import './side-end.css';

/** A joint cut through across its length, in plain numbers: for pictures only. Inches. */
type SectionProps = {
  readonly part: number;
  readonly mate: number;
  /** Round holes and slots: so thick, their middle off the reference face, so deep in both. */
  readonly square?: {
    readonly thick: number;
    readonly from: number;
    readonly inMate: number;
    readonly inPart: number;
  };
  /** A slant screw: its head, its seat along it and its tip beyond the joint; leaving the end so far off the face. */
  readonly slant?: {
    readonly head: number;
    readonly seat: number;
    readonly tip: number;
    readonly from: number;
  };
  readonly label: string;
};

const box = { width: 358, high: 118, shown: 2.6 };
const [sin, cos] = [Math.sin(Math.PI / 12), Math.cos(Math.PI / 12)];

/** The mate at the left, the part ending against it, its reference face below. */
export function JointSection({ part, mate, square, slant, label }: SectionProps) {
  const scale = Math.min(86 / Math.max(part, 0.01), (box.width - 12) / (mate + box.shown));
  const s = (x: number) => x * scale;
  const at = 6 + s(mate);
  const below = (box.high + s(part)) / 2;
  return (
    <svg class="taildraw" viewBox={`0 0 ${box.width} ${box.high}`} role="img" aria-label={label}>
      <rect class="wood pins" x="6" y="4" width={s(mate)} height={box.high - 8} stroke-width="1.5" />
      <rect
        class="wood"
        x={at}
        y={below - s(part)}
        width={box.width - 6 - at}
        height={s(part)}
        stroke-width="1.5"
      />
      {square && (
        <rect
          class="groovedraw"
          x={at - s(square.inMate)}
          y={below - s(square.from + square.thick / 2)}
          width={s(square.inMate + square.inPart)}
          height={s(square.thick)}
        />
      )}
      {slant && <Slanted {...slant} {...{ s, at, below, part }} />}
    </svg>
  );
}

type SlantedProps = NonNullable<SectionProps['slant']> & {
  readonly s: (x: number) => number;
  readonly at: number;
  readonly below: number;
  readonly part: number;
};

/** Its hole from the face to the seat of the head, kept within the part, and the screw from there to its tip. */
function Slanted({ head, seat, tip, from, s, at, below, part }: SlantedProps) {
  const x = (along: number) => at + s(along * cos);
  const y = (along: number) => below - s(from - along * sin);
  const top = below - s(part);
  const far = seat + 4;
  return (
    <>
      <svg x={at} y={top} width={box.width - 6 - at} height={s(part)}>
        <line
          class="slanthole"
          x1={x(seat) - at}
          y1={y(seat) - top}
          x2={x(far) - at}
          y2={y(far) - top}
          stroke-width={s(head)}
        />
      </svg>
      <line class="k-red" x1={x(seat)} y1={y(seat)} x2={x(-tip)} y2={y(-tip)} stroke-width="3" />
    </>
  );
}
