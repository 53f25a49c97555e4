import { joinsOf } from '../../plan/join-place';
import { screwsOf } from '../../plan/screw-plan';
import { buttedIn } from '../../trade/carcass/butted';
import { Icon } from '../../ui/icon';
import * as words from '../shared/butted-words';
import type { CasePart } from './blanks';

/** What holds the joints of a case that nothing is cut for: what is set out for them, and the way there. */
export function Butted({ c, job }: Pick<CasePart, 'c' | 'job'>) {
  const butted = buttedIn(c);
  if (butted.length === 0) return null;
  const screws = screwsOf(job, c.id).filter(({ kind }) => kind === 'butted');
  const all = [...joinsOf(job, c.id), ...screws.map(({ name }) => ({ by: 'screws' as const, name }))];
  return (
    <>
      <a class="sect" href={`#/screws/${encodeURIComponent(c.id)}`}>
        <span class="grow">
          <b>{words.whatHolds}</b>
          <span class="s muted block">{words.heldBy(all)}</span>
        </span>
        <Icon name="next" />
      </a>
      {(butted.includes('shelf') || butted.includes('bottom')) && <p class="pad-x note">{words.carries}</p>}
    </>
  );
}
