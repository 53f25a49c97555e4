import './side-end.css';

/** One side of a drawer and its wall from the front, in plain numbers, for pictures. Heights from its lower edge. */
type HungProps = {
  /** What carries it: how far in from its wall, from its lower edge to its upper. */
  readonly carrier: { readonly thick: number; readonly low: number; readonly high: number };
  /** A runner or kicker over it. */
  readonly over?: { readonly low: number; readonly high: number } | undefined;
  /** A stop block: how far in it reaches. */
  readonly block: { readonly from: number; readonly to: number; readonly low: number; readonly high: number };
  readonly play: number;
  readonly side: number;
  readonly height: number;
  readonly bottom: { readonly up: number; readonly thick: number; readonly into: number };
  readonly groove?: { readonly up: number; readonly wide: number; readonly deep: number } | undefined;
  readonly label: string;
};

const wall = 0.7;
const box = { width: 358, most: 210 };
/** So much of a high side is drawn at its lower edge and at its upper; what is between is left out. */
const ends = { low: 2.6, high: 1.2 };

/** The wall at the left, what is screwed to it, and the side of the box with its grooves. */
export function HungDrawing({ carrier, over, block, play, side, height, bottom, groove, label }: HungProps) {
  const keep = Math.max(ends.low, groove ? groove.up + groove.wide + 0.4 : 0);
  const cut = Math.max(0, height - keep - ends.high);
  const least = Math.min(0, carrier.low) - 0.3;
  const most = Math.max(height, block.high, over ? over.low + over.high : 0) + 0.3 - cut;
  const scale = Math.min(box.most / (most - least), 90);
  const x = (from: number) => 60 + (wall + from) * scale;
  const y = (up: number) => (most - (up > keep ? Math.max(keep, up - cut) : up)) * scale;
  const piece = (from: number, to: number, low: number, high: number, look = 'wood') => (
    <rect
      class={look}
      x={x(from)}
      y={y(high)}
      width={(to - from) * scale}
      height={y(low) - y(high)}
      stroke-width="1.5"
    />
  );
  const inner = play + side;
  const tall = (most - least) * scale;
  return (
    <svg class="taildraw" viewBox={`0 0 ${box.width} ${tall}`} role="img" aria-label={label}>
      <rect class="wood pins" x={x(-wall)} y="0" width={wall * scale} height={tall} stroke-width="1.5" />
      {piece(0, carrier.thick, carrier.low, carrier.low + carrier.high, 'wood pins')}
      {over && piece(0, carrier.thick, over.low, over.low + over.high, 'wood pins')}
      {piece(block.from, block.to, block.low, block.high, 'wood pins')}
      {piece(play, inner, 0, height)}
      {piece(inner - bottom.into, inner + 1.6, bottom.up, bottom.up + bottom.thick)}
      {groove && piece(play, play + groove.deep, groove.up, groove.up + groove.wide, 'groovedraw')}
      {groove && piece(0, carrier.thick, carrier.low, carrier.low + carrier.high, 'wood pins')}
      {cut > 0 && (
        <path
          class="f-surface"
          d={`M${x(play) - 4} ${y(keep) - 5}l${(side * scale + 8) / 2} 5l${(side * scale + 8) / 2} -5v6l${-(side * scale + 8) / 2} 5l${-(side * scale + 8) / 2} -5z`}
        />
      )}
    </svg>
  );
}
