import type { VNode } from 'preact';
import { useState } from 'preact/hooks';
import { editBank, editFitted, editFront } from '../../job/edits';
import type { Change } from '../../job/entry';
import { editHanging } from '../../job/hanging';
import { absolute, type Length, ratio } from '../../length/length';
import type { BankPlan } from '../../plan/bank-plan';
import { boxUpOf, type Drawer } from '../../trade/boxes/drawers';
import { usualRabbet } from '../../trade/boxes/joints/rabbeted';
import { type Bank, type BankStock, frontNo, newBank } from '../../trade/fronts/bank';
import { usualHanging } from '../../trade/fronts/hanging';
import { revealsOf } from '../../trade/fronts/reveals';
import { frontNumbers } from '../../trade/fronts/stands';
import { usualBank } from '../../trade/fronts/usual-bank';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { filled } from '../shared/filled';
import { measureSheet } from '../shared/measure-sheet';
import { Acts, Sentence } from '../shared/sentence';
import * as asks from './asks';
import type { FormPage } from './form-pages';
import * as words from './sentence-words';

export type Slip = {
  readonly bench: Bench;
  readonly found: BankPlan;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly act: (label: string, changes: readonly Change[]) => void;
};

/** What stands in while nothing is said: as is usual, as the shop has it, or as it follows from what is said. */
function usualOf({ bench, found: { bank, drawers } }: Slip): asks.Usual {
  const [first] = drawers?.ok ? drawers.value.drawers : [];
  const shop = bench.shop.value;
  const { top, bottom, ...reveals } = revealsOf(bank);
  return {
    ...usualBank(bank),
    ...reveals,
    ...dowelUsual(first),
    frontRabbet: first && usualRabbet(first.plan.front, first.plan.tape),
    top: absoluteOf(bank, top),
    bottom: absoluteOf(bank, bottom),
    sill: usualBank(bank).band,
    ...usualHanging(bank.units, bank.hung),
    ...(bank.hung ? { boxUp: boxUpOf(bank) } : {}),
    boxDeep: bank.hung ? deepOf(drawers) : (bank.slideLong ?? shop.slideLength),
    slideLong: shop.slideLength,
    slideHigh: shop.slideHeight ?? usualBank(bank).slideHigh,
    clearance: shop.slideThickness ?? usualBank(bank).clearance,
  };
}

/** How deep boxes come that run on no slides. */
const deepOf = (drawers: BankPlan['drawers']): Length | undefined =>
  drawers?.ok ? drawers.value.slides.deep?.value : undefined;

/** The dowel that was taken for the front, where it is doweled. */
const dowelUsual = (first: Drawer | undefined): asks.Usual =>
  first?.joint.kind === 'doweled'
    ? { dowel: first.joint.front.size.thick, dowelLong: first.joint.front.size.long }
    : {};

/** A covering front is said by how far it covers. */
const absoluteOf = ({ fit }: Bank, reveal: Length): Length => (fit === 'overlay' ? absolute(reveal) : reveal);

/** A sentence with its blanks, each by its name. */
function Said({ slip, says }: { readonly slip: Slip; readonly says: string }) {
  const { bench, found, open, onOpen } = slip;
  const job = bench.job.value;
  if (!job) return null;
  const { bank } = found;
  const onMeasure = (stock: BankStock) =>
    void measureSheet(bench, {
      of: bank.id,
      stick: false,
      takes: (id) =>
        stock === 'runner'
          ? editHanging(bank.id, { runnerStock: id })
          : editBank(bank.id, { [`${stock}Stock`]: id }),
    });
  const at = { bank, job, usual: usualOf(slip), onMeasure };
  return (
    <>
      {filled(says, (name) => (
        <AskBlank ask={asks.askOf(name, at)} open={open} onOpen={onOpen} />
      ))}
    </>
  );
}

type PartProps = { readonly slip: Slip; readonly label: string; readonly says: string };

const Part = ({ slip, label, says }: PartProps) => (
  <Sentence label={label}>
    <Said slip={slip} says={says} />
  </Sentence>
);

/** The sentences of a page: what is decided for every bank. */
export const PageSentences: Readonly<Record<FormPage, (slip: Slip) => VNode>> = {
  fronts: (slip) => (
    <>
      <section class="fillin" aria-label={words.labels.opening}>
        <Said slip={slip} says={words.opening(slip.found.bank)} />
      </section>
      <Part slip={slip} label={words.labels.fronts} says={words.fronts(slip.found.bank)} />
      {slip.found.bank.share === 'weights' && <HeightsList {...slip} />}
    </>
  ),
  boxes: (slip) => (
    <>
      <Part
        slip={slip}
        label={slip.found.bank.hung ? words.labels.runners : words.labels.slides}
        says={words.slides(slip.found.bank)}
      />
      <Part slip={slip} label={words.labels.pulls} says={words.pulls(slip.found.bank)} />
    </>
  ),
  wood: (slip) => (
    <>
      <Part slip={slip} label={words.labels.wood} says={words.wood(slip.found.bank)} />
      <Part slip={slip} label={words.labels.corner} says={words.corner(slip.found.bank)} />
    </>
  ),
};

/** What is usual in most banks: folded until it is wanted. */
const FoldedSentences: Readonly<Record<FormPage, (slip: Slip) => VNode>> = {
  fronts: (slip) => (
    <>
      <EndsSentence {...slip} />
      {slip.found.bank.share !== 'weights' && <HeightsList {...slip} />}
    </>
  ),
  boxes: (slip) => <Part slip={slip} label={words.labels.seat} says={words.seat(slip.found.bank)} />,
  wood: (slip) => (
    <>
      <Part slip={slip} label={words.labels.joint} says={words.joint(slip.found.bank)} />
      {words.layout(slip.found.bank) !== '' && (
        <Part slip={slip} label={words.labels.layout} says={words.layout(slip.found.bank)} />
      )}
    </>
  ),
};

const folds: Readonly<Record<FormPage, (bank: Bank) => string>> = {
  fronts: (bank) => words.ends(bank, false) + words.blank,
  boxes: (bank) => words.seat(bank),
  wood: (bank) => words.joint(bank) + words.layout(bank),
};

/** Whether anything of the folded part is not as it was before anything was said. */
function isSaid(bank: Bank, page: FormPage): boolean {
  const fresh: Bank = { ...newBank(bank.id), of: bank.of, tailsHow: bank.tailsHow };
  const fields = folds[page](bank).match(/\w+(?=})/g) ?? [];
  const own = fields.some((field) => bank[field as keyof Bank] !== fresh[field as keyof Bank]);
  if (page !== 'fronts') return own;
  return own || frontNumbers(bank).some((no) => frontNo(bank, no).high) || lettingGo(bank).length > 0;
}

/** The rest of a page: open from the start where something of it was said. */
export function Folded({ page, slip }: { readonly page: FormPage; readonly slip: Slip }) {
  const [open, setOpen] = useState(() => isSaid(slip.found.bank, page));
  return (
    <>
      <button type="button" class="nextset more" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">{words.moreOf(page, slip.found.bank)}</span>
        <Icon name="down" />
      </button>
      {open && FoldedSentences[page](slip)}
    </>
  );
}

function EndsSentence(slip: Slip) {
  const { bank, fronts } = slip.found;
  // a front's measure is from the end the fitting began at
  const begun = fronts.ok && fronts.value.columns.some((c) => c.fitted > 0);
  return (
    <Sentence label={words.labels.ends}>
      <Said slip={slip} says={words.ends(bank, begun)} />
      <FrontToggles {...slip} />
      {bank.fromBlank && <Said slip={slip} says={words.blank} />}
    </Sentence>
  );
}

function FrontToggles({ found: { bank }, act }: Slip) {
  const toggle = (field: keyof typeof words.toggles) => (
    <Toggle
      on={bank[field]}
      label={words.toggles[field]}
      onTap={() => act(words.toggles[field], editBank(bank.id, { [field]: !bank[field] }))}
    />
  );
  return (
    <Acts>
      {toggle('contentsFirst')}
      {bank.share === 'equal' && toggle('alike')}
      {toggle('fromBlank')}
    </Acts>
  );
}

type ToggleProps = { readonly on: boolean; readonly label: string; readonly onTap: () => void };

const Toggle = ({ on, label, onTap }: ToggleProps) => (
  <button type="button" class="chip" aria-pressed={on} onClick={onTap}>
    {on && <Icon name="tick" />} {label}
  </button>
);

/** What lets held heights go, in every column; nothing when none is held. */
const lettingGo = (bank: Bank): readonly Change[] =>
  Object.entries(bank.columns).flatMap(([column, { fitted }]) =>
    Object.entries(fitted).flatMap(([front, { held, trim }]) =>
      held || trim
        ? editFitted(
            { bank: bank.id, column: Number(column), front: Number(front) },
            { held: undefined, trim: undefined },
          )
        : [],
    ),
  );

/** A height given to a front stays; the others share what is left. */
function HeightsList(slip: Slip) {
  const { found, open, onOpen, act } = slip;
  const { bank, fronts } = found;
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const numbers = frontNumbers(bank);
  const given = numbers.some((no) => frontNo(bank, no).high);
  return (
    <Sentence label={words.labels.heights}>
      {words.fromTop}{' '}
      {numbers.map((no) => (
        <span key={no}>
          {no > 1 && ', '}
          {no}: {blank(asks.frontHigh(bank, no, fronts.ok ? fronts.value.heights[no - 1] : undefined))}
          {bank.share === 'weights' && (
            <>
              {' '}
              {words.shareOf} {blank(asks.frontWeight(bank, no, ratio(1n)))}
            </>
          )}
        </span>
      ))}
      .
      <Freed
        label={words.letGo}
        changes={lettingGo(bank)}
        onTap={(changes) => act(words.wereLetGo, changes)}
      />
      <Freed
        label={words.shareOut}
        changes={given ? numbers.flatMap((no) => editFront(bank.id, no, { high: undefined })) : []}
        onTap={(changes) => act(words.sharedOut, changes)}
      />
    </Sentence>
  );
}

type FreedProps = {
  readonly label: string;
  readonly changes: readonly Change[];
  readonly onTap: (changes: readonly Change[]) => void;
};

/** Lets go what is held; nothing where nothing is. */
const Freed = ({ label, changes, onTap }: FreedProps) =>
  changes.length > 0 ? (
    <Acts>
      <Toggle on={false} label={label} onTap={() => onTap(changes)} />
    </Acts>
  ) : null;
