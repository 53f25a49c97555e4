import { mostOperations } from '../../trade/setups/most';
import { Icon } from '../../ui/icon';
import { operationsText } from './too-much-words';

/** In place of the operations, where there are more than are worked out. */
export const TooManyOperations = ({ over }: { readonly over: number }) => (
  <p class="wrongline pad-x">
    <Icon name="warn" />
    The cuts of this job are not worked out. {operationsText(over, mostOperations)}
  </p>
);
