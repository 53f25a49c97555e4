import type { Job } from './job';
import { ownNameFields } from './own-fields';
import { children, pick } from './tree';

/** What a machine of the shop's own is called in a job. @example ownNameIn(job, 'own4') // 'Old saw' */
export function ownNameIn({ tree }: Pick<Job, 'tree'>, id: string): string | undefined {
  const node = children(tree, 'machines').find(([own]) => own === id)?.[1];
  return node && pick(ownNameFields, node).name;
}
