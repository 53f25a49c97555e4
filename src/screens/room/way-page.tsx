import type { Job } from '../../job/job';
import type { WayRead } from '../../job/room';
import { editRoom, editWay } from '../../job/room-edits';
import type { Length } from '../../length/length';
import type { CaseInRoom } from '../../plan/case-in-room';
import { kindOf } from '../../plan/way-plan';
import { Button, Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { Caution } from '../shared/caution';
import { lengthRefused } from '../shared/refused-words';
import { Acts, Sentence } from '../shared/sentence';
import { kinds, wayName, wayText } from '../shared/way-words';
import { DoorPlace } from './door-place';
import type { Slip } from './spots';
import * as words from './way-words';

type WayProps = {
  readonly bench: Bench;
  readonly job: Job;
  readonly slip: Slip;
  readonly cases: readonly CaseInRoom[];
};

const lengths = [
  'width',
  'height',
  'leaf',
  'beyond',
  'from',
  'into',
  'headroom',
  'going',
  'rise',
  'between',
] as const;

/** The blanks of one thing on the way; `no` counts from 1. */
function wayAsks(way: WayRead, no: number): Readonly<Record<keyof typeof words.titles, Ask>> {
  const length = (field: (typeof lengths)[number]): Ask => ({
    as: 'length',
    title: words.titles[field](no),
    kind: 'place',
    now: way[field],
    refuse: lengthRefused,
    save: (value: Length | undefined) => editWay(way.id, { [field]: value }),
  });
  const name: Ask = {
    as: 'text',
    title: words.titles.name(no),
    now: wayName(way),
    save: (text) => editWay(way.id, { name: text }),
  };
  const steps: Ask = {
    as: 'choice',
    title: words.titles.steps(no),
    now: way.winders ? 'winders' : 'straight',
    choices: [
      { value: 'straight', label: words.straight },
      { value: 'winders', label: words.winders },
    ],
    save: (to) => editWay(way.id, { winders: to === 'winders' }),
  };
  const found = Object.fromEntries(lengths.map((field) => [field, length(field)]));
  return { ...(found as Record<(typeof lengths)[number], Ask>), name, steps };
}

/** The way in: doors, turns, stairs, each with by how much every case gets by. */
export function WayPage({ bench, job, slip, cases }: WayProps) {
  const { room, found, open, onOpen, act, newId } = slip;
  const hand: Ask = {
    as: 'length',
    title: words.handTitle,
    kind: 'place',
    now: room.hand,
    usual: found.usual.hand,
    save: (value) => editRoom({ hand: value }),
  };
  return (
    <>
      <p class="pad-x empty-line">{words.start}</p>
      <Caution bench={bench} code="carry" />
      <Sentence label={words.handTitle}>
        {words.handTold(<AskBlank ask={hand} open={open} onOpen={onOpen} />)}
      </Sentence>
      {room.ways.length > 0 && cases.length === 0 && <p class="pad-x note">{words.noCase}</p>}
      {room.ways.map((way, k) => (
        <OneWay key={way.id} {...{ way, job, cases, slip }} no={k + 1} />
      ))}
      <div class="pad-x adds">
        {(['doorway', 'turn', 'stair'] as const).map((kind) => (
          <Button
            key={kind}
            icon="plus"
            label={words.add[kind]}
            onTap={() => act(words.added(kind), editWay(newId(), { kind, name: kinds[kind] }))}
          />
        ))}
      </div>
    </>
  );
}

type OneProps = Omit<WayProps, 'bench'> & { readonly way: WayRead; readonly no: number };

function OneWay({ way, no, job, cases, slip }: OneProps) {
  const { open, onOpen, act } = slip;
  const asks = wayAsks(way, no);
  const blanks = Object.fromEntries(
    Object.entries(asks).map(([name, ask]) => [
      name,
      <AskBlank key={name} ask={ask} open={open} onOpen={onOpen} />,
    ]),
  ) as words.Blanks;
  const named = cases.length > 1;
  return (
    <Sentence label={wayName(way)}>
      {words.lines[kindOf(way)](blanks)}
      {cases.map((c) => {
        const found = c.ways.find((each) => each.way.id === way.id);
        if (!found) return null;
        const { says, wrong } = wayText(found);
        const name = named ? `${job.cases.find((x) => x.id === c.id)?.name ?? ''}. ` : '';
        return (
          <p key={c.id} class={wrong ? 'wrongline pushed' : 'note pushed rests'}>
            {wrong && <Icon name="warn" />}
            {name}
            {says}
          </p>
        );
      })}
      {kindOf(way) === 'doorway' && <DoorPlace {...{ way, no, job, cases, slip }} />}
      <Acts>
        <Chip
          label={words.takeAway}
          onTap={() => act(words.takenAway(wayName(way)), editWay(way.id, { gone: true }))}
        />
      </Acts>
    </Sentence>
  );
}
