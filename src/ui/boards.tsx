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

export type BoardProps = {
  readonly length: number;
  readonly grooves: readonly DrawnGroove[];
  readonly label: string;
  /** Figures of an earlier state, while what was typed does not fit. */
  readonly stale?: boolean;
};

/** An X in the waste of a groove. */
export const Cross = ({
  x,
  y,
  reach,
}: {
  readonly x: number;
  readonly y: number;
  readonly reach: number;
}) => (
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
