import { editThing } from '../../job/edits';
import type { Job } from '../../job/job';
import type { Lot } from '../../job/loads';
import { half, type Length } from '../../length/length';
import { markAt } from '../../length/tape';
import type { Part } from '../../trade/carcass/part';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from './ask';
import * as asks from './lot-asks';
import * as words from './lot-words';
import { Acts } from './sentence';

type LotProps = {
  readonly bench: Pick<Bench, 'act'>;
  readonly job: Job;
  readonly parts: readonly Part[];
  readonly thing: Lot;
  /** On a shelf so long: how wide it is counts as well, and where it stands. */
  readonly span?: Length;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

/** Things of one kind as a sentence: what they are, where they live now and where they go. */
export function LotLine({ bench, job, parts, thing, span, open, onOpen }: LotProps) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const of = parts.find(({ id }) => id === thing.part)?.copies ?? 1;
  const own = {
    many: blank(asks.thingCount(thing)),
    name: blank(asks.thingName(thing)),
    tall: blank(asks.thingSize(thing, 'tall')),
    long: blank(asks.thingSize(thing, 'long')),
    heavy: blank(asks.thingHeavy(thing)),
  };
  return (
    <p class="fillin thing">
      {span
        ? words.shelfLine({
            ...own,
            wide: blank(asks.thingSize(thing, 'wide')),
            from: blank(asks.thingFrom(thing, span, markAt(half(span), job.tape).value)),
          })
        : words.line(own)}{' '}
      {words.moves({
        lives: blank(asks.thingLives(thing)),
        goes: blank(asks.thingGoes(thing, job, parts)),
        piece: of > 1 ? blank(asks.thingPiece(thing, of)) : undefined,
      })}
      <Acts>
        <Chip
          label={words.takeOut}
          onTap={() => void bench.act(words.takenOut(thing), editThing(thing.id, { gone: true }))}
        />
      </Acts>
    </p>
  );
}
