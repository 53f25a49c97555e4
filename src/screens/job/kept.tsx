import type { Job } from '../../job/job';
import { Chip } from '../../ui/button';
import type { Bench, ThisPhone } from '../bench';
import { KeptLine } from './kept-line';
import type { JobLater } from './later';
import * as words from './words';

type PhoneProps = { readonly phone: ThisPhone };

type KeptProps = { readonly bench: Bench; readonly job: Job; readonly later: JobLater | undefined };

/** What is kept of the job, what could not be read, and a newer version that waits. */
export const Kept = ({ bench: { phone, incoming }, job, later }: KeptProps) => (
  <div class="pad-x keptbox">
    <KeptLine phone={phone} />
    {later && <later.CopyLine copies={incoming.copies.value} />}
    {phone.kept.value === 'may-be-cleared' && <p class="note">{words.mayBeCleared}</p>}
    {job.unread.length > 0 && <p class="note">{words.unread(job.unread.length)}</p>}
    {phone.setAside.value > 0 && <SetAside phone={phone} />}
    {later && phone.updateWaiting.value && <later.NewVersion phone={phone} />}
  </div>
);

/** Entries that could not be read, and the way to hand them out. */
function SetAside({ phone }: PhoneProps) {
  const share = () => phone.asideFile().then((text) => phone.share(words.asideName, text));
  return (
    <p class="note">
      {words.setAside(phone.setAside.value)}{' '}
      <Chip label={words.shareAside(phone.setAside.value)} onTap={() => void share()} />
    </p>
  );
}
