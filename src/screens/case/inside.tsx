import type { ComponentChildren } from 'preact';
import { editInside } from '../../job/edits';
import type { Length } from '../../length/length';
import { markAt } from '../../length/tape';
import type { Inside } from '../../trade/carcass/case';
import { numberOf } from '../../trade/carcass/stands-as';
import { Chip } from '../../ui/button';
import { Acts, Sentence } from '../shared/sentence';
import * as asks from './asks';
import { blanks, type CasePart, Said } from './blanks';
import { looseSentence, Rows } from './loose';
import { OpeningsUp } from './openings-up';
import * as words from './sentence-words';
import { stopSentence, underTop } from './stop-words';
import { Template } from './template';

type InsidePart = CasePart & { readonly i: Inside };

/** One thing standing in a bay. */
export function InsideSentence(part: InsidePart) {
  const { c, i, act } = part;
  return (
    <Sentence label={words.inBays(placeInList(part))}>
      {sentence(part)}
      <Acts>
        <Chip
          label={words.takeOut}
          onTap={() => act(words.takenOut, editInside(c.id, i.id, { gone: true }))}
        />
      </Acts>
      <Said {...part} at={`in ${i.id}`} />
      {i.kind === 'loose' && <Template {...part} />}
      {part.worked && i.kind === 'loose' && <Rows i={i} sizes={part.worked.sizes} />}
      {part.worked && i.kind === 'fixed' && <OpeningsUp c={c} i={i} sizes={part.worked.sizes} />}
    </Sentence>
  );
}

const placeInList = ({ c, i }: InsidePart): number => c.inside.indexOf(i) + 1;

/** Where what has no place said stands, as it is marked. */
function placeOf({ worked, job, i }: InsidePart): Length | undefined {
  const at = worked?.sizes.case.inside.find((x) => x.id === i.id)?.at;
  return at && markAt(at, job.tape).value;
}

function sentence(part: InsidePart): ComponentChildren {
  const { c, i } = part;
  const { blank, usual } = blanks(part);
  const bay = c.partitions > 0 ? words.inBay(blank(asks.insideBay(c, i))) : null;
  const length = (at: asks.InsideLengthAt) => blank(asks.insideLength(c, i, at));
  switch (i.kind) {
    case 'fixed':
      return words.fixed(
        bay,
        length({ field: 'at', title: 'shelf', usual: placeOf(part), word: words.evenly }),
        numberOf(part.worked?.sizes.case ?? c, i),
      );
    case 'loose':
      return looseSentence(part, bay);
    case 'rail':
      return words.rail(
        bay,
        length({ field: 'wide', title: 'rail', usual: usual.rail }),
        length({ field: 'at', title: 'under' }),
      );
    case 'stop':
      return stopSentence(
        bay,
        {
          wide: length({ field: 'wide', title: 'stopWide', usual: usual.stopWide }),
          at: length({ field: 'at', title: 'stopAt', usual: placeOf(part), word: underTop }),
          back: length({ field: 'front', title: 'stopBack', usual: usual.stopBack }),
          play: length({ field: 'play', title: 'stopPlay', usual: usual.stopPlay }),
        },
        numberOf(part.worked?.sizes.case ?? c, i),
      );
    case 'trays':
      return words.trays(bay, {
        width: length({ field: 'width', title: 'width' }),
        depth: length({ field: 'depth', title: 'depth' }),
        first: length({ field: 'first', title: 'first' }),
        pitch: length({ field: 'pitch', title: 'pitch' }),
        room: length({ field: 'endRoom', title: 'room' }),
        slack: length({ field: 'slack', title: 'slack', usual: usual.slack }),
      });
  }
}
