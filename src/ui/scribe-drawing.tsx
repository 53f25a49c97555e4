import './scribe-drawing.css';

/** What comes off so high over the floor; plain numbers, for pictures only. */
type OffAt = { readonly at: number; readonly off: number; readonly text: string };

type ScribeDrawingProps = {
  readonly side: 'left' | 'right';
  readonly points: readonly OffAt[];
  readonly label: string;
};

const box = { width: 358, height: 200, edge: 132 };
/** How far the most that comes off is drawn, and never more than so many times to scale. */
const [widest, larger] = [72, 120];

/** An edge from the front with the line it is cut to: heights to scale, what comes off many times as large. */
export function ScribeDrawing({ side, points, label }: ScribeDrawingProps) {
  const up = [...points].sort((a, b) => a.at - b.at);
  const [low, top] = [up[0]?.at ?? 0, up[up.length - 1]?.at ?? 1];
  const high = box.height - 32;
  const y = (at: number): number => 16 + high - ((at - low) / Math.max(top - low, 0.01)) * high;
  const most = Math.max(...up.map(({ off }) => off), 0.01);
  const scale = Math.min((larger * high) / Math.max(top - low, 0.01), widest / most);
  const sign = side === 'left' ? 1 : -1;
  const edge = side === 'left' ? box.edge : box.width - box.edge;
  const x = (off: number): number => edge + sign * off * scale;
  const line = up.map(({ at, off }, k) => `${k === 0 ? 'M' : 'L'}${x(off)} ${y(at)}`).join('');
  const far = side === 'left' ? box.width : 0;
  return (
    <svg class="scribedraw rests" viewBox={`0 0 ${box.width} ${box.height}`} role="img" aria-label={label}>
      <rect
        class="f-birch"
        x={Math.min(edge, far)}
        y="8"
        width={Math.abs(far - edge)}
        height={box.height - 16}
      />
      <path class="waste" d={`M${edge} ${y(low)}${line.replace('M', 'L')}L${edge} ${y(top)}Z`} />
      <path class="k-red" d={line} stroke-width="3" />
      {up.map(({ at, off, text }) => (
        <text
          key={at}
          class="dim"
          x={side === 'left' ? edge - 8 : edge + 8}
          y={y(at) + 8}
          text-anchor={side === 'left' ? 'end' : 'start'}
        >
          {off === 0 ? '0' : text}
        </text>
      ))}
    </svg>
  );
}
