import type { CaseInRoom } from '../../plan/case-in-room';
import type { SideFillers } from '../../trade/room/fillers';
import { Icon } from '../../ui/icon';
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

const Side = ({ side, found }: { readonly side: 'left' | 'right'; readonly found: SideFillers }) => (
  <>
    {found.strip && <Line says={words.stripText(side, found.strip)} />}
    {found.warnings.map((warning, k) => (
      <Line key={k} says={words.fillerWarning(side, warning)} wrong={warning.code === 'binds'} />
    ))}
  </>
);

/** One case in the room: whether it goes in, and by how much each way. */
export const InRoom = ({ found }: { readonly found: CaseInRoom }) => {
  const { goesIn, spareWide, spareHigh, fillers, tilt, ways, unread, standing } = found;
  if (goesIn === undefined) return <Line says={words.notMeasured} />;
  const stands = tilt?.ok === true && tilt.value.passes;
  const [up, notRead] = [words.standUpText(found), words.unreadText(unread)];
  return (
    <div class="inroom rests">
      <p class={goesIn ? 'fact good' : 'wrongline'}>
        <Icon name={goesIn ? 'tick' : 'warn'} /> {words.goesIn(goesIn, unread)}
      </p>
      {spareWide && <Line says={words.spareWide(spareWide)} wrong={spareWide.s < 0n && spareWide.n !== 0n} />}
      {spareHigh && <Line says={words.spareHigh(spareHigh)} wrong={spareHigh.s < 0n && spareHigh.n !== 0n} />}
      {up && <Line says={up} wrong={tilt !== undefined && !stands && standing.how !== 'upright'} />}
      {fillers && <Side side="left" found={fillers.left} />}
      {fillers && <Side side="right" found={fillers.right} />}
      {ways.map((way) => (
        <Line key={way.way.id} {...wayText(way)} />
      ))}
      {notRead && <Line says={notRead} />}
    </div>
  );
};
