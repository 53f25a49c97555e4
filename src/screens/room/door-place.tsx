import type { Job } from '../../job/job';
import type { WayRead } from '../../job/room';
import { editRoom, editWay } from '../../job/room-edits';
import type { CaseInRoom } from '../../plan/case-in-room';
import { doorsFor, wantsDepth } from '../../plan/door-plan';
import { Icon } from '../../ui/icon';
import { type Ask, AskBlank } from '../shared/ask';
import { doorTold } from '../shared/door-words';
import { lengthRefused } from '../shared/refused-words';
import * as words from './door-place-words';
import type { Slip } from './spots';

type PlaceProps = {
  readonly way: WayRead;
  readonly no: number;
  readonly job: Job;
  readonly cases: readonly CaseInRoom[];
  readonly slip: Slip;
};

type ChoiceField = 'wall' | 'corner' | 'hung' | 'swing';
const choices = {
  wall: ['left', 'right', 'front', 'back'],
  corner: ['first', 'second'],
  hung: ['near', 'far'],
  swing: ['in', 'out'],
} as const;

/** What was chosen may be taken back: nothing of the place of a door is required. */
function choice({ way, no }: Pick<PlaceProps, 'way' | 'no'>, field: ChoiceField): Ask {
  const labels = words.choices(way.wall)[field];
  return {
    as: 'choice',
    title: words.titles[field](no),
    now: way[field] ?? '',
    choices: ['', ...choices[field]].map((value) => ({ value, label: labels[value] ?? words.notSaid })),
    save: (to) => {
      const value = choices[field].find((known) => known === to);
      // from another wall it is another corner
      const more = field === 'wall' && to !== way.wall ? { corner: undefined } : {};
      return editWay(way.id, { [field]: value, ...more });
    },
  };
}

/** The blanks of where a door of the way in is in the room. */
function placeAsks({ way, no, slip }: Pick<PlaceProps, 'way' | 'no' | 'slip'>): words.Asks {
  return {
    wall: choice({ way, no }, 'wall'),
    corner: choice({ way, no }, 'corner'),
    hung: choice({ way, no }, 'hung'),
    swing: choice({ way, no }, 'swing'),
    fromCorner: {
      as: 'length',
      title: words.titles.fromCorner(no),
      kind: 'place',
      now: way.fromCorner,
      save: (fromCorner) => editWay(way.id, { fromCorner }),
    },
    deep: {
      as: 'length',
      title: words.titles.deep(),
      kind: 'place',
      now: slip.room.deep,
      refuse: lengthRefused,
      save: (deep) => editRoom({ deep }),
    },
  };
}

/** Where a door is in the room with the case, which way it opens, and what it does to each case. */
export function DoorPlace({ way, no, job, cases, slip }: PlaceProps) {
  const { open, onOpen, found } = slip;
  const asks = placeAsks({ way, no, slip });
  const blank = (name: keyof words.Asks) => <AskBlank ask={asks[name]} open={open} onOpen={onOpen} />;
  const doors = cases.length > 0 ? cases.map((c) => c.doors) : [doorsFor(job, found)];
  const told = doors.flatMap((all) => {
    const own = all.find((door) => door.way.id === way.id);
    const says = own && doorTold(own);
    return says ? [says] : [];
  });
  return (
    <>
      {' '}
      {words.line({ blank, isIn: way.wall !== undefined, isDeep: wantsDepth(way) })}
      {told.map(({ says, wrong }, k) => (
        <p key={k} class={wrong ? 'wrongline pushed' : 'note pushed rests'}>
          {wrong && <Icon name="warn" />}
          {cases.length > 1 && `${job.cases.find((x) => x.id === cases[k]?.id)?.name ?? ''}. `}
          {says}
        </p>
      ))}
    </>
  );
}
