import { Icon } from '../../ui/icon';
import type { ThisPhone } from '../bench';
import * as words from './words';
import './phone.css';

type PhoneProps = { readonly phone: ThisPhone };

/** In how many places the last change is kept. */
export const KeptLine = ({ phone }: PhoneProps) => (
  <p class="kept">
    <Icon name="phone" />
    {words.kept(phone.keptIn.value, phone.servedHere.value)}
  </p>
);
