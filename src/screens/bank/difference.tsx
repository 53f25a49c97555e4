import { fineOf, type Tape } from '../../length/tape';
import type { Bank } from '../../trade/fronts/bank';
import { gapWarning } from '../../trade/fronts/fitted';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { Inline } from '../../ui/mixed';
import { unitInHand } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { choices } from './ask-words';
import type { Taken } from './column-of';
import * as words from './fit-words';
import { sidesText } from './gap-words';
import '../shared/change-list.css';
import './bank.css';

type TakenProps = { readonly bank: Bank; readonly taken: Taken; readonly tape: Tape };

type DifferenceProps = TakenProps & { readonly act: Bench['act']; readonly onGoes: () => void };

/** What is left for the gaps, what would hold them as wanted, and the one tap that uses it. */
export function Difference({ bank, taken, tape, act, onGoes }: DifferenceProps) {
  const toGo = bank.count - taken.column.fitted;
  const shown = choices.goes.choices.find((c) => c.value === bank.goes)?.label;
  return (
    <>
      <GapsLeft {...{ bank, taken, tape }} />
      {taken.trims.off.size > 0 && <Trims {...{ bank, taken, tape }} />}
      {toGo > 0 && (
        <button type="button" class="share" onClick={onGoes}>
          <span>{words.goesTo(shown)}</span>
          <Icon name="down" />
        </button>
      )}
      {taken.refused ? (
        <p class="wrongline">
          <Icon name="warn" />
          {words.refusals[taken.refused]}
        </p>
      ) : (
        <>
          <Button
            look="main full"
            label={words.use(toGo)}
            onTap={() => void act(words.fittedAct(bank.name), taken.changes)}
          />
          {taken.held && <Unticked held={taken.held} />}
        </>
      )}
    </>
  );
}

/** The measure is used all the same: it was read. That the front is on is said at the machine's screen. */
const Unticked = ({ held }: { readonly held: NonNullable<Taken['held']> }) => (
  <button type="button" class="share" onClick={held.toMachine}>
    <span>{words.notTicked(held.says)}</span>
    <Icon name="next" />
  </button>
);

/** Whether a gap still to come is tight, wide or binds, at either side. */
const isOff = ({ column: { ahead } }: Taken): boolean =>
  [ahead?.left, ahead?.right].some((gaps) => gaps && gapWarning(gaps.each, unitInHand()));

function GapsLeft({ bank, taken, tape }: TakenProps) {
  const { ahead, fitted } = taken.column;
  if (!ahead?.left) return null;
  const { gaps, each } = ahead.left;
  return (
    <p class={isOff(taken) ? 'lit' : ''}>
      {words.gapsLeft({
        toGo: bank.count - fitted,
        gaps,
        each: sidesText(each, ahead.right?.each ?? each, tape),
      })}
    </p>
  );
}

/** What each front gives where the fronts give; else what they would have to, to keep the gaps as wanted. */
function Trims({ bank, taken, tape }: TakenProps) {
  const { ahead } = taken.column;
  if (bank.goes === 'fronts') return <Heights taken={taken} tape={tape} />;
  return ahead && isOff(taken) ? <p class="s">{words.trimInAll(ahead.trim)}</p> : null;
}

const Heights = ({ taken, tape }: Omit<TakenProps, 'bank'>) => (
  <ul class="changes">
    {[...taken.trims.off].map(([no, off]) => (
      <li key={no}>
        <span class="grow">{words.gives(no, off)}</span>
        <span class="nb">
          {words.heightChange(
            <Inline value={taken.column.heights[no - 1] ?? off} tape={fineOf(tape)} />,
            <Inline value={taken.trims.heights.get(no) ?? off} tape={fineOf(tape)} />,
          )}
        </span>
      </li>
    ))}
  </ul>
);
