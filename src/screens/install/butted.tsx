import { markAt } from '../../length/tape';
import { writeMark } from '../../length/write';
import type { Plan } from '../../plan/plan';
import { buttedIn, screwLines } from '../../trade/carcass/butted';
import * as words from '../shared/butted-words';
import { partWord } from '../shared/part-words';

type ButtedProps = { readonly plan: Plan; readonly of: string };

/** Where straight screws go through the parts of a case into the ends of those that nothing is cut for. */
export function ButtedJoints({ plan: { job, worked }, of }: ButtedProps) {
  const c = job.cases.find((one) => one.id === of);
  const found = worked.get(of);
  const butted = c ? buttedIn(c) : [];
  if (butted.length === 0 || !found?.ok) return null;
  const at = (x: Parameters<typeof markAt>[0]) => writeMark(markAt(x, job.tape), job.tape);
  return (
    <section class="pad-x" aria-label={words.title}>
      <h2 class="sec">{words.title}</h2>
      <p class="s muted">{words.lines}</p>
      {screwLines(found.value).map(({ on, end, lines }) => (
        <p key={partWord(on)}>
          {words.linesOn(
            partWord(on),
            end,
            lines.map(({ holds, middle }) => `${words.holds(holds)} ${at(middle)}`),
          )}
        </p>
      ))}
      {(butted.includes('shelf') || butted.includes('bottom')) && <p class="note">{words.carries}</p>}
    </section>
  );
}
