import './piece-on-machine.css';

/** A piece on its machine, seen from above; plain numbers, for a picture only. */
export type OnMachine = {
  /** Side of the stop block, or of the rip fence; of the end that is measured from where a guide lies on the piece. */
  readonly block: 'left' | 'right';
  readonly guided?: boolean | undefined;
  /** Where the fence of a sled is: at your side, or beyond the work. */
  readonly fence?: 'near' | 'far' | undefined;
  /** Where the edge that is named lies: at you, away from you, or against the block. */
  readonly band: 'near' | 'far' | 'block';
  /** Teeth, from the block, as a share of the piece. */
  readonly blade: number;
  /** A row of holes along the piece in its place: how far from the named edge, as a share of its width. */
  readonly row?: number;
  /** The edge, by its name. */
  readonly word: string;
};

const wide = 280;
const left = 14;
const length = wide - 2 * left;
const top = 12;
const deep = 46;
const thick = 8;
const dots = { 'stroke-width': 5, 'stroke-dasharray': '0.1 10', 'stroke-linecap': 'round' } as const;

/** Stop or fence solid, the blade red, and the named edge as a dark band with its word. */
export function PieceOnMachine({ block, guided, fence, band, blade, row, word }: OnMachine) {
  const x = (share: number) => (block === 'left' ? left + share * length : wide - left - share * length);
  const bandAt = {
    near: { x: left, y: top + deep - thick, width: length, height: thick },
    far: { x: left, y: top, width: length, height: thick },
    block: { x: block === 'left' ? left : wide - left - thick, y: top, width: thick, height: deep },
  }[band];
  const wordLow = band === 'near';
  const rowAt = wordLow ? top + deep * (1 - (row ?? 0)) : top + deep * (row ?? 0);
  return (
    <svg class="piece-on-machine" viewBox={`0 0 ${wide} ${deep + 2 * top}`} aria-hidden="true">
      <rect class="f-birch" x={left} y={top} width={length} height={deep} />
      <rect class="f-notch" {...bandAt} />
      <rect class="k-onbirch" x={left} y={top} width={length} height={deep} stroke-width="1.5" />
      {fence && (
        <rect class="f-ink2" x="0" y={fence === 'near' ? top + deep : 2} width={wide} height={top - 2} />
      )}
      {!guided && (
        <rect
          class="f-blue"
          x={block === 'left' ? 0 : wide - left}
          y="4"
          width={left}
          height={deep + 16}
          rx="2"
        />
      )}
      {row === undefined ? (
        <line class="k-red" x1={x(blade)} x2={x(blade)} y1="0" y2={deep + 2 * top} stroke-width="4" />
      ) : (
        <line class="k-red" x1={left + 6} x2={wide - left - 6} y1={rowAt} y2={rowAt} {...dots} />
      )}
      <text
        class="word"
        x={block === 'left' ? wide - left - thick - 6 : left + thick + 6}
        y={wordLow ? top + deep - thick - 5 : top + thick + 17}
        text-anchor={block === 'left' ? 'end' : 'start'}
      >
        {word}
      </text>
    </svg>
  );
}
