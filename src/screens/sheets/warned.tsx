import { Icon } from '../../ui/icon';

/** A line of a list that warns. */
export const Warned = ({ text }: { readonly text: string }) => (
  <li class="fact warn">
    <Icon name="warn" />
    {text}
  </li>
);
