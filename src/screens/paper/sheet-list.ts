import type { Folded } from '../../job/log';
import { ratio } from '../../length/length';
import type { Tape } from '../../length/tape';
import { type Breakdown, useIn } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import { layOp } from '../../plan/progress';
import { type SheetCode, sheetCodes } from '../../plan/sheet-codes';
import type { CutStep } from '../../trade/sheets/cut-steps';
import { type Place, placesOf } from '../../trade/sheets/tree';
import { type Block, beside, flow, gap, type Leaf, roomOn, stacked, textBlock } from '../../ui/paper/flow';
import type { Page, WidthOf } from '../../ui/paper/ink';
import { sheetBlock } from '../../ui/paper/sheet-ink';
import { cautionWords } from '../shared/caution-words';
import { cutCaution } from '../shared/cut-caution';
import { ownName } from '../shared/machines/machine-names';
import {
  cutsInOrder,
  goodFaceDown,
  heavy,
  nameIn,
  sizeWords,
  stickUse,
  useWords,
} from '../shared/sheet-words';
import * as words from './list-words';
import { how } from './setup-sheet-words';
import { tickRow } from './tick-row';

type SheetPrint = {
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly folded: Folded;
  readonly day: string;
  readonly leaf: Leaf;
  readonly widthOf: WidthOf;
};

type SheetAt = SheetCode & {
  readonly done: (step: CutStep) => boolean;
  readonly stick: boolean;
};

/** Every sheet of the plan with its cuts, in the order of its stocks. */
function sheetsIn({ plan, found, folded }: Omit<SheetPrint, 'day' | 'leaf' | 'widthOf'>): readonly SheetAt[] {
  return sheetCodes(plan, found).map((code) => ({
    ...code,
    done: ({ path }: CutStep) => folded.ticks.has(layOp(code.sheet.id, path)),
    stick: found.stocks.get(code.sheet.stock)?.kind === 'stick',
  }));
}

const isCut = ({ steps, done }: SheetAt): boolean => steps.length > 0 && steps.every(done);

/** How many sheets there are to print, how many are cut, and what lies on none. */
export function sheetsOnPaper(of: Omit<SheetPrint, 'day' | 'leaf' | 'widthOf'>) {
  const all = sheetsIn(of);
  const cut = all.filter(isCut).length;
  const missing = of.found.pools.flatMap((view) => {
    const n = view.standing.missing.length;
    return n > 0 ? [words.notLaid(view, n)] : [];
  });
  return { open: all.length - cut, cut, missing };
}

/** A page or more for each sheet that is not cut yet: to scale, its pieces by name, its cuts in order. */
export function* sheetPages(print: SheetPrint): Generator<Page> {
  let page = 0;
  for (const at of sheetsIn(print).filter((one) => !isCut(one))) {
    const headOf = (no: number) => {
      page += 1;
      return headBlock(print, at, { no, page });
    };
    yield* flow(print.leaf, headOf, blocksOf(print, at));
  }
}

function headBlock(
  { plan, found, day, leaf, widthOf }: SheetPrint,
  { sheet, check }: SheetAt,
  { no, page }: { readonly no: number; readonly page: number },
): Block {
  const { wide } = roomOn(leaf);
  const stock = found.stocks.get(sheet.stock);
  const name = words.sheetName(sheet, stock, plan.job.tape);
  const size = words.sheetSize(sheet, stock, plan.job.tape);
  return stacked([
    beside([
      [
        0,
        textBlock(
          { text: no > 1 ? words.goesOn(name) : name, high: 5, bold: true },
          { wide: wide - signsWide, widthOf },
        ),
      ],
      [wide - signsWide, textBlock({ text: check, high: 5 }, { wide: signsWide, widthOf })],
    ]),
    textBlock({ text: size, high: 5 }, { wide, widthOf }),
    textBlock({ text: words.under(plan.job.name, day, page), high: 2.8 }, { wide, widthOf, after: 2 }),
  ]);
}

/** The two signs of a sheet stand at the right of its name, millimetres. */
const signsWide = 14;

function* blocksOf(print: SheetPrint, at: SheetAt): Generator<Block> {
  const { leaf, widthOf, plan, found } = print;
  const { sheet, steps, stick } = at;
  const { wide } = roomOn(leaf);
  const { tape } = plan.job;
  const say = (text: string, high = 2.8): Block => textBlock({ text, high }, { wide, widthOf, after: 0.6 });
  const cautions = new Set(steps.map((step) => cutCaution(step, found, stick)));
  for (const code of cautions) yield say(cautionWords(code).join(' '));
  const use = useIn(sheet, found.stocks.get(sheet.stock));
  if (use) yield say(stickUse(useWords(use, sheet.size, tape)));
  if (!stick) yield say(goodFaceDown);
  yield* drawnBlocks(print, at, say);
  if (steps.length === 0) return;
  yield { ...say(cutsInOrder, 3.6), head: true };
  const [one, other] = [...at.codes.values()].filter((code) => /\D/.test(code));
  const alike = one && other ? ` ${words.oneSetting(one, other)}` : '';
  yield { ...say(`${how}${alike}`), head: true };
  for (const step of steps) yield cutRow(print, at, step);
}

/** The sheet to scale, then every piece by its number. */
function* drawnBlocks({ plan, found, leaf, widthOf }: SheetPrint, at: SheetAt, say: (text: string) => Block) {
  const { sheet, codes, stick } = at;
  const { tape } = plan.job;
  const places = placesOf(sheet, sheet.kerf);
  const pieces = piecesOf(places, found, tape);
  const drawn = sheetBlock({
    ...{ size: sheet.size, places, stick, widthOf },
    cuts: codes,
    pieces: new Map(pieces.map(({ id, no, name }) => [id, { no, name }])),
    wide: roomOn(leaf).wide,
    high: drawnHigh,
  });
  yield drawn.block;
  if (drawn.unnumbered > 0) yield say(words.cutsOnly);
  yield gap(2);
  if (pieces.length === 0) return;
  yield { ...say(words.pieces), head: true as const };
  for (const { no, name, size } of pieces)
    yield beside([
      [0, textBlock({ text: `${no}`, high: 3.4, bold: true }, { wide: 12, widthOf })],
      [
        12,
        textBlock({ text: words.piece(name, size), high: 3.4 }, { wide: roomOn(leaf).wide - 12, widthOf }),
      ],
    ]);
}

/** So high a sheet is drawn, millimetres: its cuts begin on the same page. */
const drawnHigh = 135;

const piecesOf = (places: readonly Place[], found: Breakdown, tape: Tape) =>
  places
    .flatMap(({ branch, size }) => (branch.is === 'piece' ? [{ id: branch.piece, size }] : []))
    .map(({ id, size }, k) => ({ id, no: k + 1, name: nameIn(found)(id), size: sizeWords(size, tape) }));

/** A cut in its order: what is set, which side is kept, where the guide lies, what two carry. */
function cutRow({ plan, found, leaf, widthOf }: SheetPrint, at: SheetAt, step: CutStep): Block {
  const { codes, done, stick } = at;
  const { tape } = plan.job;
  const { saws } = found;
  const saw = stick ? undefined : step.tool === 'fence' ? saws.fence : saws.guide;
  const known = Boolean(saws.shop.shoeKeep || saws.shop.shoeWaste);
  const { weight, nearWeight = nothing, farWeight = nothing } = step;
  return tickRow({
    ...{ widthOf, to: 24, wide: roomOn(leaf).wide },
    code: codes.get(step.path) ?? '',
    ticked: done(step),
    says: words.cutSays(step, tape),
    large: true,
    notes: [
      ...(saw ? [ownName(saw)] : []),
      ...(step.tool === 'guide' && !stick ? [words.guide(step, known, tape)] : []),
      words.keeps(step, { tape, name: nameIn(found) }),
      ...(step.heavy && weight ? [heavy(weight, [nearWeight, farWeight])] : []),
    ],
  });
}

const nothing = ratio(0n);
