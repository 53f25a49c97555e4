import { useState } from 'preact/hooks';
import type { News, Place } from '../../job/backup-news';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import * as words from './import-all-words';

/** A copy of everything looked at: what is new, and whose figures stand where the two differ. */
export function LookAll({ news, bench }: { readonly news: News; readonly bench: Bench }) {
  const [short, setShort] = useState<string>();
  const pictured = bench.incoming.copies.value?.pictured.value;
  const take = async (whose: 'ours' | 'theirs') => {
    const came = await bench.incoming.copies.value?.take(whose);
    if (bench.route.value.at !== 'import') return;
    if (!bench.incoming.copies.value?.offered.value) bench.go({ at: 'job' });
    else if (came && !came.pictures) setShort(picturesShort(bench));
    else if (came) setShort(words.cameShort(came.jobs, came.of));
  };
  const nothing = !pictured && news.entries === 0 && news.differing === 0 && news.lacking.length === 0;
  return (
    <section class="look" aria-live="polite">
      <h2 class="sec">{pictured ? words.picturedTitle : words.title}</h2>
      <p>{words.newsText(news)}</p>
      {pictured && <p>{words.picturesIn(pictured.count)}</p>}
      {pictured && pictured.done > 0 && (
        <p role="status">{words.picturesDone(pictured.done, pictured.count)}</p>
      )}
      {short && (
        <p class="wrongline" role="alert">
          {short}
        </p>
      )}
      {news.places.length === 0 ? (
        <Button
          label={nothing ? words.toJob : words.takeIn}
          look="main full"
          onTap={() => void take('ours')}
        />
      ) : (
        <Whose places={news.places} onTake={(whose) => void take(whose)} />
      )}
    </section>
  );
}

const picturesShort = ({ incoming }: Pick<Bench, 'incoming'>): string => {
  const { done = 0, count = 0 } = incoming.copies.value?.pictured.value ?? {};
  return words.picturesShort(done, count);
};

type WhoseProps = { readonly places: readonly Place[]; readonly onTake: (whose: 'ours' | 'theirs') => void };

const Whose = ({ places, onTake }: WhoseProps) => (
  <>
    <p>{words.differIn(places)}</p>
    <div class="acts">
      <Button label={words.keepOurs} look="main" onTap={() => onTake('ours')} />
      <Button label={words.takeTheirs} onTap={() => onTake('theirs')} />
    </div>
  </>
);
