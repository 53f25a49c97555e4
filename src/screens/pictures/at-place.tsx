import { useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import { picturesAt, takePictureOff } from '../../job/pictures';
import type { NotedPlace } from '../../job/place-code';
import { placeCode } from '../../job/place-code';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { Noted } from '../shared/noted';
import { PictureShown } from './picture';
import { Taking } from './taking';
import * as words from './words';
import './pictures.css';

type AtPlaceProps = { readonly bench: Bench; readonly job: Job; readonly place: NotedPlace };

/** The note and the pictures of one place; a tap makes a picture large. */
export function AtPlace({ bench, job, place }: AtPlaceProps) {
  const [large, setLarge] = useState<string>();
  const pictures = bench.incoming.copies.value?.pictures;
  const code = placeCode(place);
  const all = picturesAt(job, code);
  const at = all.findIndex(({ id }) => id === large);
  const one = all[at];
  const off = (id: string) => {
    setLarge(undefined);
    void bench.act(words.tookOff, takePictureOff(id));
  };
  if (one)
    return (
      <div class="pad-x largepicture">
        <PictureShown key={one.id} {...{ pictures, picture: one }} job={job.id} no={at + 1} />
        <div class="adds">
          <Button label={words.takeOff} onTap={() => off(one.id)} />
          <Button label={words.closeIt} look="main" onTap={() => setLarge(undefined)} />
        </div>
      </div>
    );
  return (
    <>
      <Noted bench={bench} place={place} pictured />
      {pictures && <Taking bench={bench} pictures={pictures} of={code} />}
      {all.length === 0 && <p class="pad-x empty-line">{words.none}</p>}
      <ul class="pad-x picturegrid">
        {all.map((picture, k) => (
          <li key={picture.id}>
            <button type="button" onClick={() => setLarge(picture.id)}>
              <PictureShown {...{ pictures, picture }} job={job.id} no={k + 1} />
            </button>
          </li>
        ))}
      </ul>
      <p class="pad-x note">{words.keptSmall}</p>
    </>
  );
}
