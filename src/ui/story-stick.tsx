import './story-stick.css';

type StoryStickProps = {
  readonly done: readonly boolean[];
  /** Place of the one in hand; none when all are done. */
  readonly now?: number | undefined;
  readonly label: string;
};

const width = 358;

/** Progress as a stick: done is dark, to do is birch, the crow's foot stands at the one in hand. */
export function StoryStick({ done, now, label }: StoryStickProps) {
  const step = width / Math.max(1, done.length);
  const at = now === undefined ? undefined : (now + 0.5) * step;
  return (
    <svg class="story" viewBox={`0 0 ${width} 31`} role="img" aria-label={label}>
      <rect class="f-birch" x="0" y="11" width={width} height="18" />
      {done.map(
        (yes, k) => yes && <rect key={k} class="f-done" x={k * step} y="11" width={step} height="18" />,
      )}
      {done.length <= 60 &&
        done
          .slice(1)
          .map((yes, k) => (
            <line
              key={k}
              class={yes && done[k] ? 'k-birch' : 'k-onbirch'}
              x1={(k + 1) * step}
              x2={(k + 1) * step}
              y1="11"
              y2="29"
              stroke-width="1.75"
            />
          ))}
      <rect class="k-onbirch" x=".75" y="11" width={width - 1.5} height="18" stroke-width="1.5" />
      {at !== undefined && (
        <>
          <line class="k-red" x1={at} x2={at} y1="11" y2="29" stroke-width="4" />
          <path
            class="k-red"
            d={`M${at - 5} .5L${at} 10.5L${at + 5} .5`}
            stroke-width="3.5"
            stroke-linecap="round"
            stroke-linejoin="round"
          />
        </>
      )}
    </svg>
  );
}
