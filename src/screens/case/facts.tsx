import type { Job } from '../../job/job';
import type { Case } from '../../trade/carcass/case';
import { checkOf } from '../../trade/carcass/check';
import type { Worked } from '../../trade/carcass/parts';
import type { CaseProblem } from '../../trade/carcass/problems';
import { warningsOf } from '../../trade/carcass/warnings';
import { layOut } from '../../trade/grooves/lay-out';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { problemText } from '../shared/layout-words';
import { measureSheet } from '../shared/measure-sheet';
import { partWord } from '../shared/part-words';
import { warningText } from '../shared/warning-words';
import { Why } from '../shared/why';
import { caseProblemText, caseWarningText } from './problem-words';
import * as words from './words';
import './case.css';

/** What is asked for next, or what is wrong, by how much and what would fit. */
export function Problems({
  problems,
  c,
  bench,
}: {
  readonly problems: readonly CaseProblem[];
  readonly c: Case;
  readonly bench: Bench;
}) {
  const missing = problems.filter((p) => p.code === 'missing' || p.code === 'missing-stock');
  const [next] = missing;
  const shown = next ? [next] : problems;
  return (
    <ul class="problems pad-x">
      {shown.map((problem, k) => (
        <li key={k} class={next ? 'nextblank' : 'wrongline'}>
          {!next && <Icon name="warn" />}
          {caseProblemText(problem, c)}
        </li>
      ))}
      {next?.code === 'missing-stock' && (
        <li>
          <Button icon="measure" label={words.measureSheet} onTap={() => void measureSheet(bench)} />
        </li>
      )}
    </ul>
  );
}

/** What the grooves of the case's own boards come to: what cannot be cut, then what is worth a look. */
function layoutFaults({ parts }: Worked): readonly { readonly text: string; readonly stops: boolean }[] {
  const all = parts.flatMap(({ name, board }) => {
    if (!board) return [];
    const layout = layOut(board);
    return [
      ...layout.problems.map((p) => ({
        text: `${partWord(name)}: ${problemText(p, board, layout)}`,
        stops: true,
      })),
      ...layout.warnings.map((x) => ({ text: `${partWord(name)}: ${warningText(x, layout)}`, stops: false })),
    ];
  });
  return all.filter((x, k) => all.findIndex((y) => y.text === x.text) === k);
}

/** What is worth a look before anything is cut. */
export function Worth({ worked, c }: { readonly worked: Worked; readonly c: Case }) {
  const warnings = warningsOf(worked);
  const faults = layoutFaults(worked);
  if (warnings.length + faults.length === 0) return null;
  return (
    <section aria-label={words.worthLook}>
      <h2 class="sec pad-x">{words.worthLook}</h2>
      <ul class="problems pad-x">
        {faults.map(({ text, stops }) => (
          <li key={text} class={stops ? 'wrongline' : 'note'}>
            {stops && <Icon name="warn" />}
            {text}
          </li>
        ))}
        {warnings.map((warning, k) => (
          <li key={k} class="note">
            {caseWarningText(warning, c)}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The parts added back to the outside sizes, exactly. */
export function SelfCheck({ worked, job }: { readonly worked: Worked; readonly job: Job }) {
  return (
    <section aria-label={words.addsUp}>
      <h2 class="sec pad-x">{words.addsUp}</h2>
      <ul>
        {checkOf(worked).map((line) => (
          <li key={line.way} class="nextset checkline">
            <span class="grow">
              <b>{words.checkWords[line.way]}</b>
              <Why sum={line.sum} tape={job.tape} />
            </span>
            <span>
              <Inline value={line.sum.value} tape={line.sum.value.d > 128n ? '0.001' : '1/64'} />{' '}
              {line.meets ? <Icon name="tick" /> : <Icon name="warn" />}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
