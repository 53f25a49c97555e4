import type { ComponentChildren } from 'preact';
import type { Board } from '../../trade/grooves/board';
import type { Layout } from '../../trade/grooves/lay-out';
import { Icon } from '../../ui/icon';
import { problemText } from '../shared/layout-words';

type ProblemsProps = {
  readonly board: Board;
  readonly layout: Layout;
  readonly children?: ComponentChildren;
};

/**
 * What cannot be cut, in red, each by how much. A blank not filled yet is no mistake: only the next one is named,
 * quietly.
 */
export function Problems({ board, layout, children }: ProblemsProps) {
  const next = layout.problems.find((p) => p.code === 'missing');
  const wrong = layout.problems.filter((p) => p.code !== 'missing');
  return (
    <ul class="problems pad-x" role="status">
      {wrong.map((problem, k) => (
        <li key={k} class="wrongline">
          <Icon name="warn" />
          {problemText(problem, board, layout)}
        </li>
      ))}
      {next && <li class="nextblank">{problemText(next, board, layout)}</li>}
      {children}
    </ul>
  );
}
