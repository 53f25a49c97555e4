import './screen-rule.css';

export type ScreenTick = {
  /** Points from the zero of the rule. */
  readonly at: number;
  /** Of the longest tick, 0 to 1. */
  readonly long: number;
  readonly label?: string;
};

type ScreenRuleProps = {
  readonly high: number;
  readonly ticks: readonly ScreenTick[];
  /** A thing laid beside it, so thick: points. */
  readonly thick: number | undefined;
  readonly label: string;
};

const [wide, tickWide] = [150, 64];

/** A rule down the edge of the screen, in points, and a block as thick as a thing beside it. */
export const ScreenRule = ({ high, ticks, thick, label }: ScreenRuleProps) => (
  <svg class="screenrule" width={wide} height={high} role="img" aria-label={label}>
    {ticks.map(({ at, long, label: says }) => (
      <g key={at}>
        <line x1={0} x2={tickWide * long} y1={at} y2={at} />
        {says && (
          <text x={tickWide + 6} y={at + 5}>
            {says}
          </text>
        )}
      </g>
    ))}
    {thick !== undefined && <rect class="thing" x={wide - 44} y={0} width={44} height={thick} />}
  </svg>
);
