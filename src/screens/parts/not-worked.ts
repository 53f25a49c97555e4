import type { Plan } from '../../plan/plan';
import type { Case } from '../../trade/carcass/case';

/** The cases that have no parts: something is not said yet, or does not go. */
export const casesWithout = ({ job, worked }: Pick<Plan, 'job' | 'worked'>): readonly Case[] =>
  job.cases.filter((c) => worked.get(c.id)?.ok === false);
