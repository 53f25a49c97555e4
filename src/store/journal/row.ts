import type { Entry, Json } from '../../job/entry';
import type { Aside } from '../../job/rows';
import type { ValueStore } from '../values';

/**
 * A row of the journal; rows stand in the order they were written. A setting or shop figure has its moment, and the
 * later one stands; `null` takes it away; `purge` takes a job out for good. `begin` opens a file, and `whole` says that
 * all that was kept before the file stands above. The meaning of a kind never changes: a row that says something new
 * takes a new kind, which older code leaves in its place (D12).
 */
export type Row =
  | readonly ['log', Entry]
  | readonly [ValueStore, string, Json, string?]
  | readonly ['aside', Aside]
  | readonly ['purge', string]
  | readonly ['begin' | 'whole', number];

/** One entry of all jobs. */
export const rowKey = ({ job, device, count }: Pick<Entry, 'job' | 'device' | 'count'>): string =>
  `${job} ${device} ${count}`;
