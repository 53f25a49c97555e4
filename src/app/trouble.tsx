import type { Bench } from '../screens/bench';

/** A change that could not be kept stays said until one is. */
export function Trouble({ bench }: { readonly bench: Bench }) {
  const trouble = bench.trouble.value;
  if (!trouble) return null;
  const what =
    trouble.code === 'full'
      ? 'Phone storage is full. Last change not saved.'
      : `The phone did not keep the last change (${trouble.name}). Do it again.`;
  return (
    <div class="trouble" role="alert">
      <span>{what}</span>
      <button
        type="button"
        class="icon box"
        onClick={() => void bench.share(bench.job.value?.name || 'Job', bench.jobFile())}
      >
        Share the job out
      </button>
    </div>
  );
}
