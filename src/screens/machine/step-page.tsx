import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import type { Route } from '../routes';
import * as words from './step-words';

/** Pages where the figures of a step of putting up stand. */
function pagesOf({ what, part }: Operation): readonly { readonly label: string; readonly to: Route }[] {
  const id = part.replace(/~bench$/, '');
  switch (what) {
    case 'anchor':
    case 'check-again':
      return [{ label: words.screws, to: { at: 'screws', id } }];
    case 'cure':
    case 'finish':
      return [{ label: words.finish, to: { at: 'finish', id } }];
    case 'load':
      return [{ label: words.loads, to: { at: 'loads', id } }];
    case 'label':
      return [{ label: words.labels, to: { at: 'labels' } }];
    case 'look-back':
      return [{ label: words.lookBack, to: { at: 'lookback' } }];
    default:
      return [];
  }
}

export const StepPage = ({ go, op }: { readonly go: Bench['go']; readonly op: Operation }) => (
  <>
    {pagesOf(op).map(({ label, to }) => (
      <Chip key={label} label={label} onTap={() => go(to)} />
    ))}
  </>
);
