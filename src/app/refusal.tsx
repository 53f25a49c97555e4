import { render } from 'preact';
import type { Journal } from '../store/journal/journal';
import { rescue, shareFile } from './rescue';
import './app.css';

type Around = {
  readonly journal: Journal | undefined;
  /** Whether this is still what is to be said: a slow start may have come to its screen. */
  readonly stands: () => boolean;
};

/** Says why nothing can be opened, and shares out what the second copy holds, where it holds anything. */
export async function refuse(at: HTMLElement, code: RefusalCode, { journal, stands }: Around): Promise<void> {
  if (!stands()) return;
  render(<Refusal code={code} />, at);
  const found = journal && (await rescue(journal));
  if (!found || !stands()) return;
  const onShare = () => void shareFile('Knifeline', found.text);
  render(<Refusal code={code} onShare={onShare} lost={found.lost} />, at);
}

const refusals = {
  'newer-database':
    'What is kept on this phone was written by a newer Knifeline. It is left as it is. Open the newer version, or close every page of this one so that it can start.',
  blocked:
    'Another page of Knifeline is still open with an older version. Close it, then open this one again.',
  slow: 'The phone is slow to open what is kept on it. Still trying: the page opens by itself as soon as that answers.',
  'no-answer': 'The phone did not answer in time, so the page is not open. What is kept on it is untouched.',
  'no-storage':
    'This browser keeps nothing for this page, so a job would be lost. Leave the private window, or allow storage.',
};

export type RefusalCode = keyof typeof refusals;

type RefusalProps = {
  readonly code: RefusalCode;
  /** Shares out what the second copy holds, where it holds anything. */
  readonly onShare?: () => void;
  /** What is known of lines of it that could not be read. */
  readonly lost?: readonly string[];
};

const Refusal = ({ code, onShare, lost = [] }: RefusalProps) => (
  <main class="page refusal">
    <h1>Knifeline</h1>
    <p role="status">{refusals[code]}</p>
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
