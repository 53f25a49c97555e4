import { type CaseInRoom, warningsAt } from '../../plan/case-in-room';
import { isStripAt } from '../../plan/closing-plan';
import { Icon } from '../../ui/icon';
import { doorText } from './door-words';
import * as words from './in-room-words';
import { wayText } from './way-words';
import './in-room.css';

const Line = ({ says, wrong }: { readonly says: string; readonly wrong?: boolean }) =>
  wrong ? (
    <p class="wrongline">
      <Icon name="warn" />
      {says}
    </p>
  ) : (
    <p class="s">{says}</p>
  );

type SideProps = { readonly side: 'left' | 'right'; readonly found: CaseInRoom };

/** The strip of a side, or that its edge is scribed; and what is wrong there. */
const Side = ({ side, found }: SideProps) => {
  const own = found.fillers?.[side];
  if (!own) return null;
  const edge = found.byEdge.includes(side);
  return (
    <>
      {edge && <Line says={words.edgeText(side)} />}
      {own.strip && isStripAt(found, side) && <Line says={words.stripText(side, own.strip)} />}
      {warningsAt(found, side).map((warning, k) => (
        <Line key={k} says={words.fillerWarning(side, warning)} wrong={warning.code === 'binds'} />
      ))}
    </>
  );
};

/** One case in the room: whether it goes in, and by how much each way. */
export const InRoom = ({ found }: { readonly found: CaseInRoom }) => {
  const { goesIn, inDoor, spareWide, spareHigh, tilt, ways, doors, unread, standing } = found;
  if (goesIn === undefined) return <Line says={words.notMeasured} />;
  const good = goesIn && !inDoor;
  const stands = tilt?.ok === true && tilt.value.passes;
  const [up, notRead] = [words.standUpText(found), words.unreadText(unread)];
  return (
    <div class="inroom rests">
      <p class={good ? 'fact good' : 'wrongline'}>
        <Icon name={good ? 'tick' : 'warn'} /> {words.goesIn({ goesIn, inDoor, unread })}
      </p>
      {spareWide && <Line says={words.spareWide(spareWide)} wrong={spareWide.s < 0n && spareWide.n !== 0n} />}
      {spareHigh && <Line says={words.spareHigh(spareHigh)} wrong={spareHigh.s < 0n && spareHigh.n !== 0n} />}
      {up && <Line says={up} wrong={tilt !== undefined && !stands && standing.how !== 'upright'} />}
      <Side side="left" found={found} />
      <Side side="right" found={found} />
      {ways.map((way) => (
        <Line key={way.way.id} {...wayText(way)} />
      ))}
      {doors.map((door) => {
        const told = doorText(door);
        return told && <Line key={door.way.id} {...told} />;
      })}
      {notRead && <Line says={notRead} />}
    </div>
  );
};
