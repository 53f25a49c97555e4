import type { ComponentChildren } from 'preact';
import { editInside } from '../../job/edits';
import type { Length } from '../../length/length';
import type { Inside } from '../../trade/carcass/case';
import { usual } from '../../trade/carcass/usual';
import { Chip } from '../../ui/button';
import { Acts, Sentence } from '../shared/sentence';
import * as asks from './asks';
import { blanks, type CasePart } from './blanks';
import * as words from './sentence-words';

type InsidePart = CasePart & { readonly i: Inside };

/** One thing standing in a bay. */
export function InsideSentence(part: InsidePart) {
  const { c, i, act } = part;
  return (
    <Sentence label={words.inBays(numberOf(part))}>
      {sentence(part)}
      <Acts>
        <Chip
          label={words.takeOut}
          onTap={() => act(words.takenOut, editInside(c.id, i.id, { gone: true }))}
        />
      </Acts>
    </Sentence>
  );
}

const numberOf = ({ c, i }: InsidePart): number => c.inside.indexOf(i) + 1;

function sentence(part: InsidePart): ComponentChildren {
  const { c, i } = part;
  const { blank } = blanks(part);
  const bay = c.partitions > 0 ? words.inBay(blank(asks.insideBay(c, i))) : null;
  const length = (
    field: Parameters<typeof asks.insideLength>[2],
    title: keyof typeof words.insideTitles,
    stands?: Length,
  ) => {
    const named = words.whichInside(words.insideTitles[title], i.kind, numberOf(part));
    return blank(asks.insideLength(c, i, field, { title: named, ...(stands ? { usual: stands } : {}) }));
  };
  switch (i.kind) {
    case 'fixed':
      return words.fixed(bay, length('at', 'shelf'));
    case 'loose':
      return words.loose(bay, blank(asks.insideCount(c, i, words.howManyLoose(numberOf(part)))));
    case 'rail':
      return words.rail(bay, length('wide', 'rail', usual.rail), length('at', 'under'));
    case 'trays':
      return words.trays(bay, {
        width: length('width', 'width'),
        depth: length('depth', 'depth'),
        first: length('first', 'first'),
        pitch: length('pitch', 'pitch'),
        room: length('endRoom', 'room'),
        slack: length('slack', 'slack', usual.slack),
      });
  }
}
