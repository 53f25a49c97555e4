import type { DrawnGroove } from './boards';
import './open-book.css';

type OpenBookProps = {
  readonly length: number;
  readonly across: number;
  readonly grooves: readonly (DrawnGroove & { readonly stopped?: number })[];
  readonly label: string;
};

const page = 128;
const tall = 150;

/**
 * Left and right side as an open book, insides toward you, fronts outward, both on their reference end: the figures
 * are the same, only the front changes sides.
 */
export function OpenBook({ length, across, grooves, label }: OpenBookProps) {
  const y = (inches: number) => tall - (inches / Math.max(length, 0.001)) * tall;
  const short = (g: { readonly stopped?: number }) => ((g.stopped ?? 0) / Math.max(across, 0.001)) * page;
  return (
    <svg class="open-book" viewBox={`0 0 ${2 * page + 24} ${tall + 30}`} role="img" aria-label={label}>
      {[0, page + 24].map((x, k) => (
        <g key={x}>
          <rect class="f-birch" x={x} y="0" width={page} height={tall} />
          {grooves.map((g) => (
            <rect
              key={g.id}
              class="f-notch"
              x={x + (k === 0 ? short(g) : 0)}
              y={y(g.near + g.width)}
              width={page - short(g)}
              height={Math.max(1.5, y(g.near) - y(g.near + g.width))}
            />
          ))}
          <rect class="k-onbirch" x={x} y="0" width={page} height={tall} stroke-width="1.5" />
          <rect class="f-blue" x={x} y={tall} width={page} height="7" />
          <text class="f-ink w" x={x + page / 2} y={tall + 25} font-size="15" text-anchor="middle">
            {k === 0 ? 'Left' : 'Right'}
          </text>
          <text
            class="f-onbirch w"
            font-size="13"
            text-anchor="middle"
            transform={`translate(${k === 0 ? x + 12 : x + page - 4} ${tall / 2}) rotate(-90)`}
          >
            front
          </text>
        </g>
      ))}
    </svg>
  );
}
