import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import * as words from './words';

/**
 * Why this page stands and not the screen where one was: that one never came up. A tap starts with it all the same; a
 * job opened by hand ends it.
 */
export function LeftClosed({ bench: { phone, job } }: { readonly bench: Pick<Bench, 'phone' | 'job'> }) {
  const { left } = phone;
  if (left === undefined || job.value) return null;
  const again = () => {
    history.replaceState(null, '', left);
    location.reload();
  };
  return (
    <p class="note">
      {words.notUp} <Chip label={words.tryAgain} onTap={again} />
    </p>
  );
}
