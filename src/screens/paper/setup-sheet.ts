import { type Checklist, isDone } from '../../plan/checklist';
import { runsOfBuild } from '../../plan/run';
import { isSetFor, type SetupCode, setupCodes } from '../../plan/setup-codes';
import { cautionOf } from '../../trade/cautions/caution';
import { machineAt } from '../../trade/machines/machines';
import type { Operation } from '../../trade/setups/operation';
import { type Block, flow, gap, roomOn, stacked, textBlock } from '../../ui/paper/flow';
import type { Page } from '../../ui/paper/ink';
import { stocksFitted } from '../shared/at-setup';
import { cautionWords } from '../shared/caution-words';
import { setAct } from '../shared/piece-words';
import { forStocks, onArbor, testOn } from '../shared/setup-words';
import { sizeWords } from '../shared/stack-words';
import { cardBlocks, type SetupPrint } from './setup-blocks';
import * as words from './setup-sheet-words';
import { tickRow } from './tick-row';

/** Setups that share a page: one build, or steps at the bench that follow each other. */
type Sheet = { readonly bench: boolean; readonly codes: readonly SetupCode[] };

const isBench = (codes: readonly SetupCode[]): boolean => {
  const op = codes[0]?.card.operations[0];
  return op !== undefined && machineAt(op.setup.machine).cuts === 'none';
};

/** What is printed of a list: nothing of a setup that is done. */
function sheetsOf({ list, some }: Pick<SetupPrint, 'list' | 'some'>): readonly Sheet[] {
  const codes = new Map(setupCodes(list).map((code) => [code.card, code]));
  const sheets: Sheet[] = [];
  for (const run of runsOfBuild(list.cards)) {
    const open = run
      .filter((card) => !isDone(list, card) && (some?.has(card) ?? true))
      .flatMap((card) => codes.get(card) ?? []);
    const before = sheets[sheets.length - 1];
    const bench = isBench(open);
    if (open.length === 0) continue;
    if (bench && before?.bench) sheets[sheets.length - 1] = { bench, codes: [...before.codes, ...open] };
    else sheets.push({ bench, codes: open });
  }
  return sheets;
}

/** The sheets of all setups that are not done, a page or more for each build, made one by one. */
export function* setupPages(print: SetupPrint): Generator<Page> {
  let page = 0;
  for (const sheet of sheetsOf(print)) {
    const headOf = (no: number) => {
      page += 1;
      return headBlock(print, sheet, { no, page });
    };
    yield* flow(print.leaf, headOf, blocksOf(print, sheet));
  }
}

function headBlock(
  { list, day, leaf, widthOf }: SetupPrint,
  { bench, codes }: Sheet,
  at: { readonly no: number; readonly page: number },
): Block {
  const [op] = codes[0]?.card.operations ?? [];
  const { wide } = roomOn(leaf);
  if (!op) return gap(0);
  const title = words.buildTitle(op, bench, list.plan.job.tape);
  const under = words.underTitle({ job: list.plan.job.name, day, codes, ...at });
  return stacked([
    textBlock({ text: title, high: 5, bold: true }, { wide, widthOf }),
    textBlock({ text: under, high: 2.8 }, { wide, widthOf, after: 2 }),
  ]);
}

function* blocksOf(print: SetupPrint, sheet: Sheet): Generator<Block> {
  const { leaf, widthOf } = print;
  const { wide } = roomOn(leaf);
  yield textBlock({ text: words.how, high: 2.6 }, { wide, widthOf, after: 1 });
  yield* cautionBlocks(print, sheet);
  yield* setBlocks(print, sheet);
  for (const code of sheet.codes) yield* cardBlocks(print, code);
}

/** The cautions of all that is done on the page, each once. */
function cautionBlocks({ leaf, widthOf }: SetupPrint, { codes }: Sheet): readonly Block[] {
  const found = new Set(codes.flatMap(({ card }) => card.operations[0] ?? []).map(cautionOf));
  return [...found].map((code) =>
    textBlock(
      { text: cautionWords(code).join(' '), high: 2.8 },
      { wide: roomOn(leaf).wide, widthOf, after: 1 },
    ),
  );
}

/** What is put on the machine first: its box, what it is built for, how it is stacked and tried. */
function setBlocks({ list, leaf, widthOf }: SetupPrint, { codes }: Sheet): readonly Block[] {
  const [card] = codes.map((code) => code.card);
  const op = card?.operations[0];
  if (!card || !op || !isSetFor(card)) return [];
  const { wide } = roomOn(leaf);
  const ticked = list.plan.job.standing?.startsWith(op.setup.build) ?? false;
  return [
    tickRow({
      ...{ code: words.boxOfSet, ticked, to: 22, wide, widthOf },
      says: setAct(op, list.plan.job.tape),
      notes: builtOf(list, codes, op),
    }),
  ];
}

function builtOf(list: Checklist, codes: readonly SetupCode[], { setup }: Operation): readonly string[] {
  const stack = list.plan.job.recipes[setup.build]?.stack;
  const { cuts } = machineAt(setup.machine);
  const fitted = [...new Set(codes.flatMap(({ card }) => stocksFitted(list, card)))];
  const isStack = cuts === 'stack' || cuts === 'shoulders';
  return [
    ...(fitted.length > 0 ? [forStocks(fitted)] : []),
    ...(isStack && stack ? [onArbor(stack.map(sizeWords))] : []),
    ...(isStack ? [testOn(fitted)] : []),
  ];
}
