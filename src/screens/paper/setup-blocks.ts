import { blocks, type Checklist } from '../../plan/checklist';
import { letterAt, type SetupCode } from '../../plan/setup-codes';
import type { Reach } from '../../trade/machines/limits';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { placingOf } from '../../trade/setups/placing';
import {
  type Block,
  beside,
  gap,
  type Leaf,
  roomOn,
  stacked,
  textBlock,
  textLines,
} from '../../ui/paper/flow';
import { line, type Spot, type WidthOf } from '../../ui/paper/ink';
import { machineBlock, machineSize } from '../../ui/paper/machine-ink';
import { cutOtherwise } from '../shared/at-setup';
import { boardIn } from '../shared/board-of';
import { onWords } from '../shared/cut-words';
import { exactly } from '../shared/exact-words';
import { laidOut } from '../shared/laid-out';
import { lacksText } from '../shared/limit-words';
import { notedLines } from '../shared/noted-lines';
import { otherFiguresOf } from '../shared/other-figures';
import { pieceName } from '../shared/piece-words';
import { placingWords } from '../shared/placing-words';
import { reachSays } from '../shared/reach-says';
import { holeMarks } from '../shared/row-words';
import { setupTitle } from '../shared/setup-title';
import { pressShort, recipeFields, stopBlock } from '../shared/setup-words';
import { thinnerSays } from '../shared/thinner-words';
import * as words from './setup-sheet-words';
import { tickRow } from './tick-row';

/** What setup sheets are made of. */
export type SetupPrint = {
  readonly list: Checklist;
  readonly reach: Reach;
  /** Of these setups alone; of all where it is not said. */
  readonly some?: ReadonlySet<Card> | undefined;
  readonly day: string;
  readonly leaf: Leaf;
  readonly widthOf: WidthOf;
};

/** From the left margin, millimetres: the number of a setup stands there, all else beside it. */
const indent = 24;
const small = 2.8;

/** One setup: its figure, what stands on the stop, how its pieces lie, and a box for each. */
export function* cardBlocks(print: SetupPrint, code: SetupCode): Generator<Block> {
  const { list, leaf, widthOf } = print;
  const { operations } = code.card;
  const [first] = operations;
  if (!first) return;
  const { wide } = roomOn(leaf);
  const goesOn = words.goesOn(code, first, list.plan.job.tape);
  const again = textBlock({ text: goesOn, high: 5 }, { wide, widthOf, after: 2 });
  const lots = lotsOf(list, operations);
  // where all pieces lie alike, and the sheet is wide enough, that stands beside the figure
  const aside =
    lots.length === 1 && wide >= lies.beside + lies.least ? liesBeside(print, operations) : undefined;
  yield figureBlock(print, code, { op: first, aside });
  for (const block of noted(print, operations, first)) yield { ...block, again };
  for (const lot of lots) {
    const lying = aside ? undefined : liesBlock(print, lot);
    if (lying) yield { ...lying, head: true, again };
    for (const op of lot) yield { ...pieceRow(print, operations, op), again };
  }
  for (const block of [...furtherOf(print, operations), ...holesOf(print, operations)])
    yield { ...block, again };
  yield gap(2);
}

const text = ({ leaf, widthOf }: SetupPrint, says: string, high = small): Block =>
  textBlock({ text: says, high }, { wide: roomOn(leaf).wide, widthOf, from: indent, after: 0.6 });

/** A long text, a block a line: it may go on over the page. */
const lines = ({ leaf, widthOf }: SetupPrint, says: string, high = small): readonly Block[] =>
  textLines({ text: says, high }, { wide: roomOn(leaf).wide, widthOf, from: indent });

type FigureOf = { readonly op: Operation; readonly aside: Block | undefined };

/** Number and check at the left; what is set, the figure as large as at the saw, what is on the stop. */
function figureBlock({ list, leaf, widthOf }: SetupPrint, code: SetupCode, { op, aside }: FigureOf): Block {
  const { tape } = list.plan.job;
  const { wide } = roomOn(leaf);
  const { figure } = op.setup;
  const own = { wide: (aside ? lies.beside - 3 : wide) - indent, widthOf };
  const number = stacked([
    textBlock({ text: `${code.no}`, high: 7, bold: true }, { wide: indent, widthOf }),
    textBlock({ text: code.check, high: 5 }, { wide: indent, widthOf }),
  ]);
  const rest = figure && words.rest(figure, tape);
  const said = stacked([
    textBlock({ text: setupTitle(op), high: 3.6, bold: true }, own),
    ...(figure ? [textBlock({ text: words.big(figure, tape), high: giant, bold: true }, own)] : []),
    ...(rest ? [textBlock({ text: rest, high: 5 }, own)] : []),
    ...(onWords(op.setup) ? [textBlock({ text: onWords(op.setup), high: small }, own)] : []),
  ]);
  const ruled: Block = { high: 2, ink: ([x, y]: Spot) => [line([x, y + 1], [x + wide, y + 1], 0.4)] };
  const columns = [
    [0, number] as const,
    [indent, said] as const,
    ...(aside ? [[lies.beside, aside] as const] : []),
  ];
  return { ...stacked([ruled, beside(columns), gap(1)]), head: true };
}

const giant = 11;

/** What is said of the setting: thinner stuff, what its machine cannot reach, what was found out before. */
function noted(print: SetupPrint, operations: readonly Operation[], first: Operation): readonly Block[] {
  const { plan } = print.list;
  const recipe = plan.job.recipes[first.setup.key] ?? {};
  const kept = (['scale', 'height', 'got'] as const).flatMap((field) => {
    const value = recipe[field];
    return value ? [words.found(recipeFields[field], exactly(value))] : [];
  });
  return [
    ...thinnerSays(plan, operations),
    ...reachSays(operations, plan, print.reach),
    ...kept,
    ...notedLines({
      job: plan.job,
      plan,
      place: { of: 'setup', id: first.setup.key },
      parts: [...new Set(operations.map(({ part }) => part))],
    }),
  ].flatMap((says) => lines(print, says));
}

/** Pieces that lie alike, drawn and said once for all of them. */
function lotsOf(list: Checklist, operations: readonly Operation[]): readonly (readonly Operation[])[] {
  const lots = new Map<string, readonly Operation[]>();
  for (const op of operations) {
    const key = JSON.stringify(liesOf(list, op));
    lots.set(key, [...(lots.get(key) ?? []), op]);
  }
  return [...lots.values()];
}

/** How a piece lies, as its card draws and says it. */
const liesOf = ({ plan }: Checklist, op: Operation) => ({
  picture: laidOut(placingOf(op), op, plan),
  says: Object.values(placingWords(placingOf(op), plan.job.tape)) as readonly string[],
});

/** Where it stands beside the figure, and what it takes there, millimetres. */
const lies = { beside: 96, least: 80 };

const liesLines = ({ widthOf }: SetupPrint, says: readonly string[], wide: number): Block =>
  stacked(
    says.map((one, k) =>
      textBlock(
        { text: one, high: k === 0 ? 3.4 : 3, ...(k === 0 ? { bold: true } : {}) },
        { wide, widthOf },
      ),
    ),
  );

/** Picture over words. */
function liesBeside(print: SetupPrint, [op]: readonly Operation[]): Block | undefined {
  const { picture, says } = op ? liesOf(print.list, op) : { picture: undefined, says: [] };
  if (!picture) return undefined;
  return stacked([
    gap(2),
    machineBlock(picture),
    liesLines(print, says, roomOn(print.leaf).wide - lies.beside),
  ]);
}

/** Picture and words side by side. */
function liesBlock(print: SetupPrint, [op]: readonly Operation[]): Block | undefined {
  if (!op) return undefined;
  const { picture, says } = liesOf(print.list, op);
  if (!picture && says.length === 0) return undefined;
  const from = indent + (picture ? machineSize.wide + 5 : 0);
  const lines = liesLines(print, says, roomOn(print.leaf).wide - from);
  return stacked([
    beside([...(picture ? [[indent, machineBlock(picture)] as const] : []), [from, lines]]),
    gap(2),
  ]);
}

/** The box of a piece, by its letter in the whole setup. */
function pieceRow(
  { list, leaf, widthOf }: SetupPrint,
  operations: readonly Operation[],
  op: Operation,
): Block {
  const ticked = list.doing.done(op.id);
  const waits = !ticked && blocks(list, op).length > 0;
  const notes = [
    ...(waits ? [words.notYet(list, op)] : []),
    ...[list.plan.job.let[op.id], cutOtherwise(list, op)].flatMap((note) => note || []),
  ];
  return beside([
    [
      indent,
      tickRow({
        ...{ ticked, notes, widthOf, to: 24 },
        code: letterAt(operations.indexOf(op)),
        says: words.piece(op, list.plan.job.tape),
        wide: roomOn(leaf).wide - indent,
      }),
    ],
  ]);
}

/** Lines said of several pieces, with the names of those they are said of. */
function byLine<T>(found: readonly (readonly [line: string, name: string, of: T])[]) {
  const lines = new Map<string, { readonly names: readonly string[]; readonly of: T }>();
  for (const [says, name, of] of found)
    lines.set(says, { of, names: [...(lines.get(says)?.names ?? []), name] });
  return [...lines];
}

/** Further figures of grooves: to the far teeth, from the other end, each with its remainder. */
function furtherOf(print: SetupPrint, operations: readonly Operation[]): readonly Block[] {
  const { plan } = print.list;
  const { tape } = plan.job;
  const told = operations.flatMap((op) => {
    const board = op.groove && boardIn(plan.job, op.groove.board, () => plan.parts);
    const more =
      board && op.groove && otherFiguresOf(board, { shop: print.reach, tape, setting: op.groove.setting });
    if (!more) return [];
    const figures = more.figures.map(({ label, figure }) => words.figure(label, figure, tape));
    return [[figures.join('; '), pieceName(op, tape), more.notes] as const];
  });
  return byLine(told).flatMap(([says, { names, of }]) => [
    { ...text(print, words.ofPieces(names, '')), head: true as const },
    ...lines(print, says, 5),
    ...of.map((note) => text(print, note)),
  ]);
}

/** Every hole of a row as it is marked. */
function holesOf(print: SetupPrint, operations: readonly Operation[]): readonly Block[] {
  const { tape } = print.list.plan.job;
  const rows = operations.flatMap((op) =>
    op.which?.is === 'row'
      ? [[words.holes(holeMarks(op.which.bore, tape)), pieceName(op, tape), op.which] as const]
      : [],
  );
  return byLine(rows).flatMap(([says, { names, of: row }]) => [
    { ...text(print, words.ofPieces(names, words.eachHole)), head: true as const },
    ...[
      ...(row.short ? [pressShort(row.short)] : []),
      ...(row.passed ?? []).map((way) => lacksText(way, tape)),
      ...(operations[0]?.setup.machine === 'press' ? [stopBlock] : []),
    ].map((line) => text(print, line)),
    ...lines(print, says, 5),
  ]);
}
