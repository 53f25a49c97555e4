import { useState } from 'preact/hooks';
import { editHandJoint } from '../../job/edits';
import type { Plan } from '../../plan/plan';
import type { Part } from '../../trade/carcass/part';
import { crossedBy, faultOf, type HandJoint, sideOf } from '../../trade/joints/by-hand';
import { othersLike } from '../../trade/joints/dado-by-hand';
import { edgesOf, rowEdgeOf } from '../../trade/joints/edges';
import { rowsKeptOff } from '../../trade/joints/rows-kept-off';
import { Button, Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { filled } from '../shared/filled';
import { partWord } from '../shared/part-words';
import { boredFace, sideWords } from '../shared/placing-words';
import { countRefused, lengthRefused } from '../shared/refused-words';
import { Acts } from '../shared/sentence';
import * as words from './hand-joint-words';

type Props = {
  readonly bench: Pick<Bench, 'act' | 'newId'>;
  readonly part: Part;
  readonly plan: Plan;
};

/** Joints cut in a part that no case asks for: at the same setups as those of its case. */
export function HandJoints({ bench, part, plan }: Props) {
  const [open, setOpen] = useState<Ask>();
  const own = plan.job.joints.filter((joint) => joint.part === part.id);
  const add = () =>
    void bench.act(
      words.added,
      editHandJoint(bench.newId(), { part: part.id, kind: 'rabbet', at: edgesOf(part)[0] }),
    );
  return (
    <section aria-label={words.another}>
      {own.map((joint, k) => (
        <One
          key={joint.id}
          {...{ bench, part, joint, own, open, no: k + 1, parts: plan.parts }}
          onOpen={setOpen}
        />
      ))}
      <div class="pad-x adds">
        <Button label={words.another} look="quiet" icon="plus" onTap={add} />
      </div>
      <AskDock ask={open} tape={plan.job.tape} act={bench.act} onClose={() => setOpen(undefined)} />
    </section>
  );
}

type OneProps = Omit<Props, 'plan'> & {
  readonly parts: readonly Part[];
  readonly joint: HandJoint;
  /** All that was added to the part, as it is counted there. */
  readonly own: readonly HandJoint[];
  readonly no: number;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

function One({ bench, part, parts, joint, own, no, open, onOpen }: OneProps) {
  const asks = asksOf(part, joint, no);
  const says = saidOf(part, joint, own);
  const named: Readonly<Record<string, string>> = {
    end: words.endWords(part.end),
    edge: words.edgeWords(rowEdgeOf(part)),
    bored: boredFace(part),
  };
  const like = joint.kind === 'dado' ? likeAsk(part, parts, joint) : undefined;
  const inFace = part.name.role === 'partition' ? words.inPartition[joint.kind] : undefined;
  const slip = inFace ?? words.slips[joint.kind];
  return (
    <div class="fillin run">
      {filled(slip, (name) =>
        name in named ? (
          named[name]
        ) : (
          <AskBlank key={name} ask={asks[name as words.Blank]} open={open} onOpen={onOpen} />
        ),
      )}
      {says && (
        <p class="wrongline pushed">
          <Icon name="warn" />
          {says}
        </p>
      )}
      <Acts>
        {like && <Chip label={words.like} onTap={() => onOpen(like)} />}
        <Chip
          label={words.remove}
          onTap={() =>
            void bench.act(
              words.removed(words.kinds(edgesOf(part)[0])[joint.kind]),
              editHandJoint(joint.id, { gone: true }),
            )
          }
        />
      </Acts>
    </div>
  );
}

/** Why it is not cut, or what it opens. */
function saidOf(part: Part, joint: HandJoint, own: readonly HandJoint[]): string | undefined {
  const wrong = faultOf(part, joint);
  if (wrong) return words.fault(wrong, joint.kind === 'holes' ? 'bored' : 'cut');
  const crossed = crossedBy(part, joint);
  const kept = rowsKeptOff(part, joint, own).map((row) => own.indexOf(row) + 1);
  const says = [
    crossed.length > 0 ? words.crosses(crossed) : '',
    kept.length > 0 ? words.keepsOff(kept) : '',
  ];
  return says.filter(Boolean).join(' ') || undefined;
}

const kinds = ['rabbet', 'groove', 'dado', 'notch', 'lap', 'mitre', 'holes'] as const;
const faces = ['A', 'B'] as const;
const ends = ['end', 'other'] as const;

function asksOf(part: Part, joint: HandJoint, no: number): Readonly<Record<words.Blank, Ask>> {
  const { id, kind, at, takes } = joint;
  // one that was said before is offered as it was
  const places = kind === 'mitre' ? ends : [...new Set([...edgesOf(part), ...ends, at] as const)];
  const length = (
    blank: 'width' | 'depth' | 'near' | 'off' | 'pitch',
    title = words.ask(blank, no),
  ): Ask => ({
    as: 'length',
    title,
    kind: 'place',
    now: joint[blank],
    refuse: lengthRefused,
    save: (value) => editHandJoint(id, { [blank]: value }),
  });
  return {
    kind: kindAsk(part, joint, no),
    at: {
      as: 'choice',
      title: words.ask('at', no),
      now: at,
      choices: places.map((value) => ({ value, label: sideWords(sideOf(part, value)) })),
      save: (value) => editHandJoint(id, { at: places.find((one) => one === value) }),
    },
    face: faceAsk(joint, no),
    takes: {
      as: 'text',
      title: words.ask('takes', no),
      now: takes || words.nothing,
      save: (said) => editHandJoint(id, { takes: said === words.nothing ? undefined : said || undefined }),
    },
    width: length('width'),
    depth: length('depth'),
    near: length('near', nearTitle(part, joint, no)),
    off: length('off', words.ask('off', no, words.edgeWords(rowEdgeOf(part)))),
    pitch: length('pitch'),
    count: countAsk(joint, no),
  };
}

function kindAsk(part: Part, { id, kind, at }: HandJoint, no: number): Ask {
  const called = words.kinds(edgesOf(part)[0]);
  const offered = kinds.filter((one) => one === kind || isOffered(part, one));
  return {
    as: 'choice',
    title: words.ask('kind', no),
    now: kind,
    choices: offered.map((value) => ({ value, label: called[value] })),
    save: (value) =>
      editHandJoint(id, {
        kind: kinds.find((one) => one === value),
        // only an end is mitred
        ...(value === 'mitre' && !ends.some((one) => one === at) ? { at: 'end' } : {}),
      }),
  };
}

/** From the edge or end that a groove runs along, else from the reference end. */
function nearTitle(part: Part, { kind, at }: HandJoint, no: number): string {
  const side = sideWords(sideOf(part, kind === 'groove' ? at : 'end'));
  return words.ask(kind === 'holes' ? 'first' : 'near', no, side);
}

/** The dados of other parts it may be set like; nothing where there are none. */
function likeAsk(part: Part, parts: readonly Part[], { id }: HandJoint): Ask | undefined {
  const others = othersLike(part, parts);
  if (others.length === 0) return undefined;
  return {
    as: 'choice',
    title: words.like,
    now: '',
    choices: others.map(({ of, ...dado }, k) => ({
      value: `${k}`,
      label: words.likeOne(partWord(of.name), of.end, dado),
    })),
    save: (value) => {
      const { near, width, depth } = others[Number(value)] ?? {};
      return editHandJoint(id, { near, width, depth });
    },
  };
}

/** The grooves of a board laid out by hand are laid out in Marks. */
const isOffered = (part: Part, kind: HandJoint['kind']): boolean =>
  kind !== 'dado' || part.name.role !== 'board';

const countAsk = ({ id, count }: HandJoint, no: number): Ask => ({
  as: 'count',
  title: words.ask('count', no),
  now: count,
  refuse: countRefused(1000, words.holes, 1),
  save: (value) => editHandJoint(id, { count: value }),
});

/** Of a partition, which of its two faces is cut. */
const faceAsk = ({ id, face = 'A' }: HandJoint, no: number): Ask => ({
  as: 'choice',
  title: words.ask('face', no),
  now: face,
  choices: faces.map((value) => ({ value, label: words.faces[value] })),
  save: (value) => editHandJoint(id, { face: faces.find((one) => one === value) }),
});
