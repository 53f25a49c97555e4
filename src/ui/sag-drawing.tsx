import { forDrawing, type Length } from '../length/length';
import './sag-drawing.css';

type SagProps = {
  readonly span: Length;
  readonly thick: Length;
  readonly sag: Length;
  readonly allowed: Length;
  /** The strip on its front edge hangs so far below its upper face. */
  readonly tall?: Length | undefined;
  readonly label: string;
  /** Written under the span, and that its sag is drawn tenfold. */
  readonly across: string;
  readonly note: string;
};

const box = { wide: 358, end: 14, head: 16 };
/** So much the sag is drawn larger than the shelf. */
const larger = 10;
/** A picture lower than this shows nothing; a sag drawn further than this leaves it. */
const [least, most] = [96, 200];

/** A shelf between its uprights to scale, its sag drawn tenfold; where it may sag to is a broken line. */
export function SagDrawing({ span, thick, sag, allowed, tall, label, across, note }: SagProps) {
  const scale = (box.wide - 2 * box.end) / Math.max(forDrawing(span), 0.01);
  const t = Math.max(3, forDrawing(thick) * scale);
  const hangs = tall ? Math.max(t, forDrawing(tall) * scale) : t;
  const deep = (x: Length): number => Math.min(most, forDrawing(x) * larger * scale);
  const [down, limit] = [deep(sag), deep(allowed)];
  const foot = Math.max(least, box.head + hangs + Math.max(down, limit) + 44);
  const ends = [0, box.wide - box.end];
  return (
    <svg class="sagdraw" viewBox={`0 0 ${box.wide} ${foot}`} role="img" aria-label={label}>
      {ends.map((x) => (
        <rect key={x} class="f-birch2" x={x} y={0} width={box.end} height={foot - 40} />
      ))}
      {tall && <path class="f-birch2" d={bent(down, hangs)} />}
      <path class="f-birch shelf" d={bent(down, t)} />
      <path class="limit" d={`M${box.end} ${box.head + t + limit}H${box.wide - box.end}`} />
      <text class="dim" x={box.wide / 2} y={foot - 22} text-anchor="middle">
        {across}
      </text>
      <text class="dim small" x={box.wide / 2} y={foot - 4} text-anchor="middle">
        {note}
      </text>
    </svg>
  );
}

const steps = 24;

/** Both faces of an evenly loaded shelf: 16/5 of the sag in the middle × (u - 2u³ + u⁴). */
function bent(down: number, thick: number): string {
  const wide = box.wide - 2 * box.end;
  const at = (k: number): readonly [number, number] => {
    const u = k / steps;
    return [box.end + u * wide, box.head + 3.2 * down * (u - 2 * u ** 3 + u ** 4)];
  };
  const all = Array.from({ length: steps + 1 }, (_, k) => at(k));
  const line = (points: readonly (readonly [number, number])[], by: number): string =>
    points.map(([x, y]) => `${x.toFixed(1)} ${(y + by).toFixed(1)}`).join('L');
  return `M${line(all, 0)}L${line([...all].reverse(), thick)}Z`;
}
