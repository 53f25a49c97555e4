import type { ReadonlySignal } from '@preact/signals';
import type { LayProblem } from '../../trade/sheets/lay-problem';
import type { Refit } from '../../trade/sheets/solve';
import type { Laid, TwoDError } from '../../trade/sheets/two-d/two-d';

/** A layout being looked for: the best so far, and how the search stands. */
export type Laying = {
  readonly problem: LayProblem;
  readonly seed: number;
  readonly state: 'running' | 'stopped' | 'done' | 'cannot' | 'failed';
  readonly best?: Laid;
  readonly error?: TwoDError;
};

/** The searches of the page, by the stock their pool is named for. App makes it. */
export type LayingBench = {
  readonly all: ReadonlySignal<ReadonlyMap<string, Laying>>;
  readonly start: (id: string, problem: LayProblem) => void;
  /** Looks further, from another start; the best so far stays. */
  readonly goOn: (id: string) => void;
  readonly stop: (id: string) => void;
  readonly letGo: (id: string) => void;
  /** Another job is opened: what was looked for in this one is let go. */
  readonly clear: () => void;
  readonly refit: (problem: LayProblem) => Promise<Refit>;
};
