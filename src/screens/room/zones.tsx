import type { ZoneRead } from '../../job/room';
import { editZone } from '../../job/room-edits';
import { Chip } from '../../ui/button';
import { type Ask, AskBlank } from '../shared/ask';
import { Acts, Sentence } from '../shared/sentence';
import { Head, Note, type Slip } from './spots';
import * as words from './wall-words';

type ZoneLength = 'from' | 'to' | 'low' | 'high';

/** The blanks of one place where nothing may be fastened. */
const zoneAsks = (zone: ZoneRead, no: number): Readonly<Record<'what' | ZoneLength, Ask>> => {
  const length = (field: ZoneLength, title: string): Ask => ({
    as: 'length',
    title,
    kind: 'place',
    now: zone[field],
    save: (value) => editZone(zone.id, { [field]: value }),
  });
  return {
    what: {
      as: 'text',
      title: words.zoneWhat(no),
      now: zone.what || words.something,
      save: (what) => editZone(zone.id, { what }),
    },
    from: length('from', words.zoneFrom(no)),
    to: length('to', words.zoneTo(no)),
    low: length('low', words.zoneLow(no)),
    high: length('high', words.zoneHigh(no)),
  };
};

/** Places where nothing may be fastened: along the wall, and how high where that is known. */
export function Zones({ zones, open, onOpen, act, newId }: Slip & { readonly zones: readonly ZoneRead[] }) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <>
      <Head
        title={words.zones}
        add={words.addZone}
        onAdd={() => act(words.zoneAdded, editZone(newId(), { what: words.something }))}
      />
      <Note says={words.zonesTold} />
      {zones.map((zone, k) => {
        const asks = zoneAsks(zone, k + 1);
        const name = zone.what || words.something;
        return (
          <Sentence key={zone.id} label={name}>
            {words.zoneLine({
              what: blank(asks.what),
              from: blank(asks.from),
              to: blank(asks.to),
              low: blank(asks.low),
              high: blank(asks.high),
            })}
            <Acts>
              <Chip
                label={words.takeAway}
                onTap={() => act(words.takenAway(name), editZone(zone.id, { gone: true }))}
              />
            </Acts>
          </Sentence>
        );
      })}
    </>
  );
}
