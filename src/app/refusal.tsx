import { render } from 'preact';
import type { OpenError } from '../store/db';
import type { Journal } from '../store/journal/journal';
import { rescue, shareFile } from './rescue';
import './app.css';

/** Says why nothing can be opened, and shares out what the second copy holds, where it holds anything. */
export async function refuse(
  at: HTMLElement,
  code: OpenError['code'],
  journal: Journal | undefined,
): Promise<void> {
  render(<Refusal code={code} />, at);
  const found = journal && (await rescue(journal));
  if (!found) return;
  const onShare = () => void shareFile('Knifeline', found.text);
  render(<Refusal code={code} onShare={onShare} lost={found.lost} />, at);
}

const refusals = {
  'newer-database':
    'What is kept on this phone was written by a newer Knifeline. It is left as it is. Open the newer version, or close every page of this one so that it can start.',
  blocked:
    'Another page of Knifeline is still open with an older version. Close it, then open this one again.',
  'no-storage':
    'This browser keeps nothing for this page, so a job would be lost. Leave the private window, or allow storage.',
};

type RefusalProps = {
  readonly code: keyof typeof refusals;
  /** Shares out what the second copy holds, where it holds anything. */
  readonly onShare?: () => void;
  /** What is known of lines of it that could not be read. */
  readonly lost?: readonly string[];
};

const Refusal = ({ code, onShare, lost = [] }: RefusalProps) => (
  <main class="page refusal">
    <h1>Knifeline</h1>
    <p>{refusals[code]}</p>
    <button type="button" class="btn main" onClick={() => location.reload()}>
      Open again
    </button>
    {onShare && (
      <>
        <p>
          {lost.length === 0
            ? 'What was kept here is whole in the second copy.'
            : `What was kept here is in the second copy, but for what could not be read there: ${lost.join('; ')}.`}
        </p>
        <button type="button" class="btn" onClick={onShare}>
          Share everything out
        </button>
      </>
    )}
  </main>
);
