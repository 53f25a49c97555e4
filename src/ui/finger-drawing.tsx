import './tail-drawing.css';

/** A side of a drawer at its front end, in plain numbers: for pictures only. Heights up from its lower edge. */
type FingerProps = {
  readonly height: number;
  readonly long: number;
  readonly slots: readonly { readonly near: number; readonly far: number }[];
  /** Stopped in the front: it does not show in the fingers of the front that fill the slots. */
  readonly groove: { readonly up: number; readonly wide: number; readonly stopped: boolean };
  readonly label: string;
};

const box = { width: 358, height: 250 };

/** The side laid down: its fingers to the right, those of the front in its slots, the groove for the bottom across. */
export function FingerDrawing({ height, long, slots, groove, label }: FingerProps) {
  const scale = Math.min(box.height / Math.max(height, 0.01), 90);
  const deep = long * scale;
  const base = 240;
  const y = (up: number) => (height - up) * scale;
  const h = height * scale;
  return (
    <svg class="taildraw" viewBox={`0 -6 ${box.width} ${h + 12}`} role="img" aria-label={label}>
      <rect class="wood" x="20" y="0" width={base - 20 + deep} height={h} stroke-width="1.5" />
      <rect
        class="groovedraw"
        x="20"
        y={y(groove.up + groove.wide)}
        width={base - 20 + deep}
        height={Math.max(1, groove.wide * scale)}
      />
      {slots.map(({ near, far }) => (
        <rect
          key={near}
          class="wood pins"
          x={base}
          y={y(far)}
          width={deep}
          height={(far - near) * scale}
          stroke-width="1.5"
        />
      ))}
      {!groove.stopped && (
        <rect
          class="groovedraw"
          x={base}
          y={y(groove.up + groove.wide)}
          width={deep}
          height={Math.max(1, groove.wide * scale)}
        />
      )}
      <line class="k-red" x1={base} x2={base} y1="-5" y2={h + 5} stroke-width="1.5" />
    </svg>
  );
}
