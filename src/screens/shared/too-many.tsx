import { mostOperations } from '../../trade/setups/most';
import { Icon } from '../../ui/icon';
import { notWorkedOut, operationsText } from './too-much-words';

/** In place of the operations, where there are more than are worked out. */
export const TooManyOperations = ({ over }: { readonly over: number }) => (
  <p class="wrongline pad-x">
    <Icon name="warn" />
    {notWorkedOut} {operationsText(over, mostOperations)}
  </p>
);
