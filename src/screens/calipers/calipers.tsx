import { useEffect, useState } from 'preact/hooks';
import type { Bench } from '../bench';
import { listen } from './listen';
import { cameText, type Said } from './words';
import './calipers.css';

/**
 * Calipers that act as a keyboard, heard on every page. What came of a reading is spoken and stands in one quiet line
 * until the next tap or key: nothing goes away by itself.
 */
export function Calipers({ bench }: { readonly bench: Bench }) {
  const [said, setSaid] = useState<Said>();
  useEffect(() => {
    const unit = () => {
      const { calipers } = bench.settings.value;
      return calipers === 'tape' ? undefined : calipers;
    };
    return listen(document, { unit, say: setSaid });
  }, []);
  const atTheSaw = bench.route.value.at === 'saw';
  return (
    <p class="caliper-line" role="status">
      {said && cameText(said, atTheSaw)}
    </p>
  );
}
