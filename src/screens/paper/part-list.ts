import type { Checklist } from '../../plan/checklist';
import { workOn } from '../../plan/part-work';
import { opCodes } from '../../plan/setup-codes';
import type { Part } from '../../trade/carcass/part';
import { type Block, beside, flow, gap, type Leaf, roomOn, stacked, textBlock } from '../../ui/paper/flow';
import { line, type Page, type WidthOf } from '../../ui/paper/ink';
import { cutElse } from '../shared/at-setup';
import { byStock } from '../shared/by-stock';
import { notedLines } from '../shared/noted-lines';
import { madeOf, operation } from '../shared/part-list-words';
import { partWord } from '../shared/part-words';
import * as words from './list-words';
import { tickRow } from './tick-row';

type PartPrint = {
  readonly list: Checklist;
  readonly day: string;
  readonly leaf: Leaf;
  readonly widthOf: WidthOf;
};

/** Every part by its stock: its size, how many, and what is done to it in order, each with its box and code. */
export const partPages = (print: PartPrint): Generator<Page> =>
  flow(print.leaf, headOf(print), blocksOf(print));

const headOf =
  ({ list, day, leaf, widthOf }: PartPrint) =>
  (page: number): Block => {
    const { wide } = roomOn(leaf);
    const under = words.under(list.plan.job.name, day, page);
    return stacked([
      textBlock({ text: words.byPart, high: 5, bold: true }, { wide, widthOf }),
      textBlock({ text: under, high: 2.8 }, { wide, widthOf, after: 2 }),
    ]);
  };

function* blocksOf(print: PartPrint): Generator<Block> {
  const codes = opCodes(print.list);
  const code = (op: Parameters<typeof codes.get>[0]) => codes.get(op) ?? '';
  for (const { parts } of byStock(print.list.plan))
    for (const part of parts) yield* partBlocks(print, part, code);
}

function* partBlocks({ list, leaf, widthOf }: PartPrint, part: Part, code: CodeOf): Generator<Block> {
  const { plan, doing } = list;
  const { wide } = roomOn(leaf);
  const at = { wide, widthOf };
  const name = partWord(part.name);
  const stuff = plan.stuff.find((s) => s.id === part.stuff);
  const again = textBlock({ text: words.goesOn(name), high: 3.6, bold: true }, { ...at, after: 1 });
  const work = workOn(plan, part.id);
  const head = stacked([
    { high: 2, ink: ([x, y]) => [line([x, y + 1], [x + wide, y + 1], 0.4)] },
    textBlock({ text: name, high: 4, bold: true }, at),
    textBlock({ text: words.sizes(part, plan.job.tape), high: 5 }, at),
    textBlock({ text: madeOf(part, stuff), high: 3 }, { ...at, after: 1 }),
    ...notedLines({ job: plan.job, plan, place: { of: 'part', id: part.id }, parts: [] }).map((text) =>
      textBlock({ text, high: 2.8 }, { ...at, after: 1 }),
    ),
  ]);
  yield { ...head, ...(work.length > 0 ? { head: true as const } : {}) };
  for (const op of work) {
    const row = tickRow({
      ...{ widthOf, to: 38, wide: wide - indent, large: true as const },
      notes: [operation(op, { copies: part.copies, tape: plan.job.tape }, cutElse(list, op))],
      code: code(op),
      ticked: doing.done(op.id),
      says: words.setTo(op, plan.job.tape),
    });
    yield { ...beside([[indent, row]]), again };
  }
  yield gap(2);
}

const indent = 6;

type CodeOf = (op: Parameters<ReturnType<typeof opCodes>['get']>[0]) => string;
