import { useState } from 'preact/hooks';
import { Chip } from '../../ui/button';
import type { ThisPhone, UpdateHeld } from '../bench';
import * as words from './later-words';

/** A newer version waits: it can be started now, or what holds it is said. */
export function NewVersion({ phone }: { readonly phone: ThisPhone }) {
  const [held, setHeld] = useState<UpdateHeld>();
  return (
    <p class="note">
      {words.newVersion}{' '}
      <Chip label={words.startNow} onTap={async () => setHeld(await phone.startUpdate())} />
      {held && ` ${words.held[held]}`}
    </p>
  );
}
