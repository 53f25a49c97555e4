import type { Length } from '../length/length';
import type { Bank } from '../trade/fronts/bank';
import { type Hanging, hungOn, kickersHow } from '../trade/fronts/hanging';
import { edits } from './edits';
import type { Job } from './job';
import { saidFields } from './said-fields';
import { children, named, pick, type Tree } from './tree';

/** What is said of how boxes are hung, and the stock their runners are of. */
type Said = Hanging & { readonly runnerStock?: string | undefined };

/** What each is kept under, beside what is said of their joints. Stored: no spelling is ever changed. */
const keptAs: Readonly<Record<keyof Said, string>> = {
  hung: 'hung',
  sidePlay: 'sideplay',
  backRoom: 'backroom',
  runHigh: 'runhigh',
  kickers: 'kickers',
  kickRoom: 'kickroom',
  stripUp: 'stripup',
  stripPlay: 'stripplay',
  runnerStock: 'runnerof',
};

/** What is kept as a word; all else is a size. */
const words: readonly string[] = ['hung', 'kickers', 'runnerStock'] satisfies readonly (keyof Said)[];

const oneOf = <T extends string>(list: readonly T[], said: string | undefined): T | undefined =>
  list.find((word) => word === said);

/** A bank with what is said of how its boxes are hung, which later screens alone ask for. */
export function withHanging({ tree }: Pick<Job, 'tree'>, bank: Bank): Bank {
  const own: Tree | undefined = children(tree, 'banks').find(([id]) => id === bank.id)?.[1];
  const said = named(own ? children(own, 'corner') : [], (node) => pick(saidFields, node));
  const how = (name: keyof Said): string | undefined => said[keptAs[name]]?.how;
  const hung = oneOf(hungOn, how('hung'));
  if (!hung) return bank;
  const size = (name: keyof Said): Length | undefined => said[keptAs[name]]?.size;
  const runner = how('runnerStock');
  return {
    ...bank,
    hung,
    sidePlay: size('sidePlay'),
    backRoom: size('backRoom'),
    runHigh: size('runHigh'),
    kickers: oneOf(kickersHow, how('kickers')),
    kickRoom: size('kickRoom'),
    stripUp: size('stripUp'),
    stripPlay: size('stripPlay'),
    stocks: runner ? { ...bank.stocks, runner } : bank.stocks,
  };
}

/** Whether a field of a bank is one of how its boxes are hung. */
export const isOfHanging = (field: string): field is keyof Said => Object.hasOwn(keptAs, field);

/** The edits that change how the boxes of a bank are hung; `undefined` takes a value away. */
export const editHanging = (bank: string, patch: Said) =>
  Object.entries(patch).flatMap(([name, value]) => {
    const at = `banks/${bank}/corner/${keptAs[name as keyof Said]}/`;
    return edits(at, saidFields, words.includes(name) ? { how: value as string } : { size: value as Length });
  });
