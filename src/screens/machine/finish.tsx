import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import * as words from './words';

/** Changes the finish of the screen: bright for daylight, dim for the cellar. */
export function Finish({ bench }: { readonly bench: Pick<Bench, 'keep'> }) {
  const dark = document.documentElement.dataset.theme === 'blued';
  return (
    <button
      type="button"
      class="icon"
      aria-label={words.finishChange(dark)}
      onClick={() => void bench.keep({ theme: dark ? 'satin' : 'blued' })}
    >
      <Icon name="dim" />
    </button>
  );
}
