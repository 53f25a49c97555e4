import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../ui/button';
import { Dock } from '../../ui/dock';
import type { Bench } from '../bench';
import type { PictureName } from '../pictures';
import * as words from './phone-words';

/** Pictures of jobs that went for good: they stay until a tap deletes them. */
export function JoblessPictures({ bench }: { readonly bench: Pick<Bench, 'incoming' | 'shelf'> }) {
  const [found, setFound] = useState<readonly PictureName[]>([]);
  const [asked, setAsked] = useState(false);
  const [failed, setFailed] = useState(false);
  const pictures = bench.incoming.copies.value?.pictures;
  const ids = () => bench.shelf.jobs.peek().map(({ id }) => id);
  const some = pictures?.some.value === true;
  const look = async () => setFound(pictures && some ? await pictures.jobless(ids()) : []);
  useEffect(() => void look().catch(() => undefined), [some]);
  if (!pictures || found.length === 0) return null;
  const remove = async () => {
    setAsked(false);
    const names = await pictures.jobless(ids());
    const jobs = [...new Set(names.map(({ job }) => job))];
    const hashesOf = (job: string) => names.flatMap((name) => (name.job === job ? [name.hash] : []));
    const done = await Promise.all(jobs.map((job) => pictures.drop(job, hashesOf(job))));
    setFailed(done.includes(false));
    await look();
  };
  return (
    <>
      <h2 class="sec">{words.joblessTitle}</h2>
      <p>{words.joblessSays(found.length)}</p>
      <Button label={words.deleteThem(found.length)} onTap={() => setAsked(true)} />
      {failed && (
        <p class="wrongline" role="alert">
          {words.notDeleted}
        </p>
      )}
      {asked && (
        <Dock title={words.deleteTitle} onClose={() => setAsked(false)}>
          <div class="body acts">
            <p>{words.deleteSays}</p>
            <Button label={words.deleteThem(found.length)} look="full" onTap={() => void remove()} />
          </div>
        </Dock>
      )}
    </>
  );
}
