import { editPart } from '../../job/edits';
import { equals } from '../../length/length';
import type { Plan } from '../../plan/plan';
import type { Part, Shares } from '../../trade/carcass/part';
import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import * as words from './one-mark-words';
import { partWord } from './part-words';

type Way = 'length' | 'width';
const field = { length: 'alike', width: 'alikeWide' } as const;

/** Parts that equal others of unlike stock or grain, which way, and what was said of them. */
type Question = {
  readonly parts: readonly Part[];
  readonly mates: readonly Part[];
  readonly way: Way;
  readonly said: Shares | 'asked';
};

type OneMarkProps = {
  readonly bench: Pick<Bench, 'act'>;
  readonly plan: Plan;
  /** What is cut here. */
  readonly operations: readonly Operation[];
  /** What was answered shows too, to be changed. */
  readonly answered?: boolean;
};

/** Whether equal parts of unlike stock or grain share one mark: asked where they are cut, once. */
export function OneMark({ bench, plan, operations, answered = false }: OneMarkProps) {
  const asked = questionsOf(plan, operations).filter(({ said }) => answered || said === 'asked');
  return (
    <>
      {asked.map((one) => (
        <Ask key={`${one.parts[0]?.id}${one.way}`} bench={bench} {...one} />
      ))}
    </>
  );
}

function Ask({ bench, parts, mates, way, said }: Question & Pick<OneMarkProps, 'bench'>) {
  const names = namesOf(parts);
  const answer = (shares: Shares) =>
    void bench.act(
      words.act(names, shares),
      parts.flatMap(({ id }) => editPart(id, { [field[way]]: shares })),
    );
  return (
    <div class="pad-x facts">
      <p class="note">{words.question({ names, mates: namesOf(mates), way }, said)}</p>
      <div class="chips">
        {(['together', 'apart'] as const)
          .filter((shares) => shares !== said)
          .map((shares) => (
            <Chip key={shares} label={words.answers[shares]} onTap={() => answer(shares)} />
          ))}
      </div>
    </div>
  );
}

const namesOf = (parts: readonly Part[]): readonly string[] => [
  ...new Set(parts.map(({ name }) => partWord(name))),
];

/** The sizes cut here that are to be asked about, those of one stock in one question. */
function questionsOf({ parts }: Plan, operations: readonly Operation[]): readonly Question[] {
  const found = new Map<string, Question>();
  for (const { part: id, what } of operations) {
    const way = what === 'rip' ? 'width' : 'length';
    const part = parts.find((p) => p.id === id);
    const said = part?.[way].unlike;
    if (!part || !said || (what !== 'rip' && what !== 'length')) continue;
    const equal = parts.filter((p) => isEqual(p, part, way));
    const ofOne = equal.filter((p) => p.stuff === part.stuff && p[way].unlike === said);
    const mates = equal.filter((p) => p[way].unlike === undefined);
    found.set(`${ofOne[0]?.id} ${way}`, { parts: ofOne, mates, way, said });
  }
  return [...found.values()];
}

/** Two sizes of one opening of a case that are exactly equal. */
const isEqual = (a: Part, b: Part, way: Way): boolean =>
  a.of === b.of &&
  a[way].spans !== undefined &&
  a[way].spans?.opening === b[way].spans?.opening &&
  equals(a[way].sum.value, b[way].sum.value);
