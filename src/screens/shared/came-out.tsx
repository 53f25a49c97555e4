import { useState } from 'preact/hooks';
import { equals, type Length, subtract } from '../../length/length';
import type { Checklist } from '../../plan/checklist';
import { jobWith } from '../../plan/job-with';
import { type CameOut, matchedBy, matchOf } from '../../plan/match';
import { workOn } from '../../plan/part-work';
import type { Plan } from '../../plan/plan';
import { planOnce } from '../../plan/plan-once';
import type { Change } from '../../trade/setups/changes';
import { Button } from '../../ui/button';
import { Dock } from '../../ui/dock';
import type { Bench } from '../bench';
import * as words from './came-out-words';
import { ChangeList } from './change-list';
import { exactly } from './exact-words';
import { SpoiledDock } from './spoiled';
import { stayingAt } from './stay-at';
import './spoiled.css';

/** A piece that came out otherwise: its copy, and what it is called. */
export type Out = CameOut & { readonly copy: string; readonly piece: string };

type MatchProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly out: Out;
  readonly onClose: () => void;
};

/** Make its mates match, or recut it: first what matching would move, the cut named apart. */
export function MatchDock({ bench, list, out, onClose }: MatchProps) {
  const [again, setAgain] = useState(false);
  const { part, way, size, piece, copy } = out;
  const found = matchOf(list.plan, out);
  if (again) {
    const operations = workOn(list.plan, part.id).filter((op) => op.copy === copy);
    return <SpoiledDock {...{ bench, list, onClose }} card={{ operations }} />;
  }
  const recut = () => setAgain(true);
  const match = () => {
    if (found.ok) void stayingAt(bench, opOf(list, out), () => bench.act(words.matchAct(piece), found.value));
    onClose();
  };
  return (
    <Dock title={words.cameOut(piece, way, subtract(size, part[way].mark.value))} onClose={onClose}>
      <div class="body spoil">
        <p>{found.ok ? words.ask : words.noMatch(found.error)}</p>
        {found.ok ? (
          <WouldMatch {...{ bench, list }} changes={found.value} onMatch={match} onRecut={recut} />
        ) : (
          <Button label={words.recut} look="main full" onTap={recut} />
        )}
      </div>
    </Dock>
  );
}

/** The cut that a piece came out otherwise at. */
const opOf = ({ plan }: Checklist, { part, way, copy }: Out): string | undefined =>
  plan.operations.find(
    (op) => op.part === part.id && op.copy === copy && op.what === (way === 'length' ? 'length' : 'rip'),
  )?.id;

type WouldProps = Pick<MatchProps, 'bench' | 'list'> & {
  readonly changes: Parameters<Bench['act']>[1];
  readonly onMatch: () => void;
  readonly onRecut: () => void;
};

/** What matching comes to, before it is done: what it spoils above its button, all that moves below. */
function WouldMatch({ bench, list, changes, onMatch, onRecut }: WouldProps) {
  const { plan } = list;
  const after = planOnce(jobWith(bench.folded.value, plan.job.id, changes), bench.shop.value);
  const { moved, off } = matchedBy(list, after.operations);
  const { tape } = plan.job;
  return (
    <>
      {outsides(plan, after).map((line) => (
        <p key={line}>{line}</p>
      ))}
      <Off {...{ off }} says={(change) => words.offBy(change, tape)} />
      <Button label={words.match} look="main full" onTap={onMatch} />
      <Button label={words.recut} look="full" onTap={onRecut} />
      <h3>{words.changes}</h3>
      <ChangeList changes={moved} tape={tape} most={4} />
    </>
  );
}

const mostOff = 6;

/** What is cut already stays as it is: by how much it will be off. */
function Off({ off, says }: { readonly off: readonly Change[]; readonly says: (change: Change) => string }) {
  if (off.length === 0) return null;
  return (
    <div class="wrongline block">
      <p>{words.cutAlready}</p>
      <ul>
        {off.slice(0, mostOff).map((change) => (
          <li key={change.op.id}>{says(change)}</li>
        ))}
      </ul>
      {off.length > mostOff && <p>{words.moreOff(off.length - mostOff)}</p>}
    </div>
  );
}

const ways = { across: 'width', up: 'height', deep: 'depth' } as const;

/** The outside sizes of a case that come out otherwise. */
function outsides(before: Plan, after: Plan): readonly string[] {
  return before.job.cases.flatMap((c) => {
    const [was, now] = [before.worked.get(c.id), after.worked.get(c.id)];
    if (!was?.ok || !now?.ok) return [];
    const [old, made] = [was.value.sizes, now.value.sizes];
    return (['across', 'up', 'deep'] as const).flatMap((way) => {
      const [from, to]: readonly Length[] = [old[ways[way]].value, made[ways[way]].value];
      if (!from || !to || equals(from, to)) return [];
      return words.outside(c.name, exactly(from), exactly(to), way);
    });
  });
}
