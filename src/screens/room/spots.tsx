import type { Change } from '../../job/entry';
import type { Room } from '../../job/room';
import { editAcross, editUpright } from '../../job/room-edits';
import type { RoomPlan } from '../../plan/room-plan';
import { type Spot, sameSpot } from '../../trade/room/spot';
import { BarButton } from '../../ui/bar';
import { Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { type Ask, AskBlank } from '../shared/ask';
import { Acts, Sentence } from '../shared/sentence';
import { acrossAsks, roomLength, uprightAsks } from './asks';
import * as said from './said';
import * as words from './words';

/** What every part of the page stands on. */
export type Slip = {
  readonly room: Room;
  readonly found: RoomPlan;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly act: (label: string, changes: readonly Change[]) => void;
  readonly newId: () => string;
};

export const Wrong = ({ says }: { readonly says: string }) => (
  <p class="wrongline pad-x">
    <Icon name="warn" />
    {says}
  </p>
);
export const Note = ({ says }: { readonly says: string }) => <p class="pad-x note rests">{says}</p>;

type HeadProps = { readonly title: string; readonly add?: string; readonly onAdd?: () => void };

export const Head = ({ title, add, onAdd }: HeadProps) => (
  <div class="sechead">
    <h2 class="sec">{title}</h2>
    {add && onAdd && <BarButton icon="plus" label={add} boxed onTap={onAdd} />}
  </div>
);

/** Whether a refusal is about this spot: then it is said under its sentence. */
const isHere = (
  error: object,
  {
    at,
    plane = 'front',
  }: { readonly at?: Spot['at'] | undefined; readonly plane?: Spot['plane'] | undefined },
): boolean => 'spot' in error && at !== undefined && sameSpot(error.spot as Spot, { at, plane });

/** The places between the walls, each with what is wrong there. */
export function AcrossSpots({ room, found, open, onOpen, act, newId }: Slip) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const { widths, plumb } = found;
  const wrong = [
    ...(widths && !widths.ok
      ? [{ error: widths.error, says: said.rowErrorText(widths.error, said.spotAcross) }]
      : []),
    ...(plumb && !plumb.ok ? [{ error: plumb.error, says: said.plumbErrorText(plumb.error) }] : []),
  ];
  const add = () => {
    const id = newId();
    act(words.widthAdded, editAcross(id, { plane: 'front' }));
    onOpen(acrossAsks({ id }, room.spotsAcross.length + 1).at);
  };
  return (
    <>
      <Head title={words.widths} add={words.addWidth} onAdd={add} />
      <Sentence label={words.apart}>{words.linesTold(blank(roomLength(room, 'apart')))}</Sentence>
      {room.spotsAcross.map((spot, k) => {
        const asks = acrossAsks(spot, k + 1);
        return (
          <Sentence key={spot.id} label={words.place(k + 1)}>
            {words.acrossLine({
              at: blank(asks.at),
              plane: blank(asks.plane),
              wide: blank(asks.wide),
              left: blank(asks.left),
              right: blank(asks.right),
            })}
            {wrong.flatMap(({ error, says }) =>
              isHere(error, spot) ? [<Wrong key={says} says={says} />] : [],
            )}
            <Acts>
              <Chip
                label={words.takeAway}
                onTap={() => act(words.takenAway(words.place(k + 1)), editAcross(spot.id, { gone: true }))}
              />
            </Acts>
          </Sentence>
        );
      })}
      {wrong.flatMap(({ error, says }) =>
        room.spotsAcross.some((spot) => isHere(error, spot)) ? [] : [<Wrong key={says} says={says} />],
      )}
      <AcrossFacts found={found} />
    </>
  );
}

function AcrossFacts({ found: { widths, plumb, wide, widest, asks } }: Pick<Slip, 'found'>) {
  const differs = plumb?.ok ? said.differsText(plumb.value.differs) : undefined;
  return (
    <>
      {asks.includes('apart') && <Note says={said.askText.apart} />}
      {asks.includes('at-across') && <Note says={said.askText['at-across']} />}
      {widths?.ok && <Note says={said.rowText(widths.value, said.spotAcross)} />}
      {plumb?.ok && <Note says={said.plumbText(plumb.value)} />}
      {differs && <Wrong says={differs} />}
      {wide?.by === 'least' && <Note says={said.leastOnlyWide} />}
      {widest && !widest.ok && <Wrong says={said.widthErrorText(widest.error)} />}
    </>
  );
}

/** The places between floor and ceiling. */
export function UprightSpots({ room, found, open, onOpen, act, newId }: Slip) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const { heights, level } = found;
  const wrong = [
    ...(heights && !heights.ok
      ? [{ error: heights.error, says: said.rowErrorText(heights.error, said.spotUpright) }]
      : []),
    ...(level && !level.ok ? [{ error: level.error, says: said.levelErrorText(level.error) }] : []),
  ];
  const add = () => {
    const id = newId();
    act(words.heightAdded, editUpright(id, { plane: 'front' }));
    onOpen(uprightAsks({ id }, room.spotsUpright.length + 1).at);
  };
  return (
    <>
      <Head title={words.heights} add={words.addWidth} onAdd={add} />
      {room.spotsUpright.map((spot, k) => {
        const asks = uprightAsks(spot, k + 1);
        return (
          <Sentence key={spot.id} label={words.upright(k + 1)}>
            {words.uprightLine({
              at: blank(asks.at),
              plane: blank(asks.plane),
              high: blank(asks.high),
              drop: blank(asks.drop),
              rise: blank(asks.rise),
            })}
            {wrong.flatMap(({ error, says }) =>
              isHere(error, spot) ? [<Wrong key={says} says={says} />] : [],
            )}
            <Acts>
              <Chip
                label={words.takeAway}
                onTap={() => act(words.takenAway(words.upright(k + 1)), editUpright(spot.id, { gone: true }))}
              />
            </Acts>
          </Sentence>
        );
      })}
      {wrong.flatMap(({ error, says }) =>
        room.spotsUpright.some((spot) => isHere(error, spot)) ? [] : [<Wrong key={says} says={says} />],
      )}
      <UprightFacts found={found} />
    </>
  );
}

function UprightFacts({ found: { heights, level, high, highest, asks } }: Pick<Slip, 'found'>) {
  return (
    <>
      {asks.includes('at-upright') && <Note says={said.askText['at-upright']} />}
      {heights?.ok && <Note says={said.rowText(heights.value, said.spotUpright)} />}
      {level?.ok && <Note says={said.levelText(level.value)} />}
      {high?.by === 'least' && <Note says={said.leastOnlyHigh} />}
      {highest && !highest.ok && <Wrong says={said.heightErrorText(highest.error)} />}
    </>
  );
}
