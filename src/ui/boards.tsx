/** A groove as drawn: plain numbers, for pictures only. */
export type DrawnGroove = {
  readonly id: string;
  readonly near: number;
  readonly width: number;
  readonly done: boolean;
  readonly current?: boolean;
  readonly wrong?: boolean;
  /** On the face that looks away: dashed. */
  readonly behind?: boolean;
};

type BoardProps = {
  readonly length: number;
  readonly grooves: readonly DrawnGroove[];
  readonly label: string;
  /** Figures of an earlier state, while what was typed does not fit. */
  readonly stale?: boolean;
  /** A rabbet along the far edge, as a share of the board's width. */
  readonly edge?: number;
};

/** The board lying down, reference end left against the blue block, red near edges, an X in each waste. */
export function BoardLying({ length, grooves, label, stale, edge = 0 }: BoardProps) {
  const scale = 343 / Math.max(length, 0.001);
  return (
    <svg class={stale ? 'lying stale' : 'lying'} viewBox="0 -8 356 66" role="img" aria-label={label}>
      <rect class="f-birch" x="10" y="0" width="343" height="50" />
      {edge > 0 && (
        <rect class="f-notch" x="10" y="0" width="343" height={50 * Math.min(1, edge)} opacity=".5" />
      )}
      {grooves.map((g) => (
        <LyingGroove key={g.id} x={10 + g.near * scale} w={g.width * scale} groove={g} />
      ))}
      <rect class="k-onbirch" x="10" y="0" width="343" height="50" stroke-width="1.5" />
      <rect class="f-blue" x="0" y="-6" width="10" height="62" />
    </svg>
  );
}

function LyingGroove({
  x,
  w,
  groove,
}: {
  readonly x: number;
  readonly w: number;
  readonly groove: DrawnGroove;
}) {
  if (groove.behind) {
    return (
      <rect class="k-onbirch" x={x} y="3" width={w} height="44" stroke-width="1.25" stroke-dasharray="3 3" />
    );
  }
  return (
    <>
      <rect class="f-notch" x={x} y="0" width={w} height="50" opacity={groove.done ? 1 : 0.5} />
      <line class="k-red" x1={x} x2={x} y1="-5" y2="50" stroke-width={groove.current ? 4 : 2.5} />
      <line class="k-onbirch" x1={x + w} x2={x + w} y1="0" y2="50" stroke-width="1" />
      {!groove.done && w >= 3 && <Cross x={x + w / 2} y={25} reach={Math.min(w * 0.36, 6)} />}
    </>
  );
}

const Cross = ({ x, y, reach }: { readonly x: number; readonly y: number; readonly reach: number }) => (
  <path
    class="k-onbirch"
    d={`M${x - reach} ${y - reach}L${x + reach} ${y + reach}M${x + reach} ${y - reach}L${x - reach} ${y + reach}`}
    stroke-width="2"
    stroke-linecap="round"
  />
);

type StandingProps = BoardProps & {
  /** Height of the drawing, px, and where each groove's row of figures stands, px from the bottom. */
  readonly height: number;
  readonly rows: readonly number[];
};

const boardWidth = 46;
const foot = 10;

/** The board standing on its reference end, each red near edge running out to its own row of figures. */
export function BoardStanding({ length, grooves, label, height, rows, stale }: StandingProps) {
  const scale = (height - foot) / Math.max(length, 0.001);
  const y = (inches: number) => height - foot - inches * scale;
  return (
    <svg
      class={stale ? 'standing stale' : 'standing'}
      width={boardWidth + 32}
      height={height}
      viewBox={`-8 0 ${boardWidth + 32} ${height}`}
      role="img"
      aria-label={label}
    >
      <rect class="f-birch" x="0" y="0" width={boardWidth} height={height - foot} />
      <path
        class="k-onbirch"
        d={`M12 6C9 ${height * 0.3} 16 ${height * 0.6} 11 ${height - 16}M28 6C32 ${height * 0.35} 25 ${height * 0.65} 30 ${height - 16}`}
        stroke-width="1"
        opacity=".22"
      />
      {grooves.map((g, k) => (
        <StandingGroove
          key={g.id}
          groove={g}
          near={y(g.near)}
          far={y(g.near + g.width)}
          row={height - (rows[k] ?? 0)}
        />
      ))}
      <rect class="k-onbirch" x="0" y="0" width={boardWidth} height={height - foot} stroke-width="1.5" />
      <rect class="f-blue" x="-8" y={height - foot} width={boardWidth + 16} height={foot} />
    </svg>
  );
}

type StandingGrooveProps = {
  readonly groove: DrawnGroove;
  readonly near: number;
  readonly far: number;
  readonly row: number;
};

function StandingGroove({ groove, near, far, row }: StandingGrooveProps) {
  const tall = near - far;
  const out = boardWidth + 22;
  return (
    <>
      <rect class="f-notch" x="0" y={far} width={boardWidth} height={tall} opacity={groove.done ? 1 : 0.5} />
      <line class="k-onbirch" x1="0" x2={boardWidth} y1={far} y2={far} stroke-width="1.25" />
      {!groove.done && tall >= 5 && (
        <Cross x={boardWidth / 2} y={(near + far) / 2} reach={Math.min(tall * 0.34, 7)} />
      )}
      <path
        class="k-red"
        d={`M0 ${near}H${boardWidth + 6}L${out} ${row}`}
        stroke-width="3"
        stroke-linejoin="round"
      />
    </>
  );
}

type SledProps = {
  readonly length: number;
  readonly grooves: readonly DrawnGroove[];
  /** Teeth of the setting in hand, from the end that is on the stop. */
  readonly blade: number;
  readonly label: string;
};

/** The board on the sled: stop block, blade, grooves cut solid and to be cut dashed. */
export function BoardOnSled({ length, grooves, blade, label }: SledProps) {
  const scale = 328 / Math.max(length, 0.001);
  return (
    <svg viewBox="0 0 358 54" class="sled-board" role="img" aria-label={label}>
      <rect class="f-birch" x="22" y="8" width="328" height="38" />
      {grooves.map((g) => (
        <rect
          key={g.id}
          class={g.done ? 'f-notch' : 'k-onbirch'}
          x={22 + g.near * scale}
          y="8"
          width={Math.max(1.5, g.width * scale)}
          height="38"
          stroke-width={g.done ? 0 : 1.25}
          stroke-dasharray={g.done ? undefined : '3 3'}
        />
      ))}
      <rect class="k-onbirch" x="22" y="8" width="328" height="38" stroke-width="1.5" />
      <rect class="f-blue" x="2" y="2" width="20" height="50" rx="2" />
      <line class="k-red" x1={22 + blade * scale} x2={22 + blade * scale} y1="0" y2="54" stroke-width="4" />
    </svg>
  );
}

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
