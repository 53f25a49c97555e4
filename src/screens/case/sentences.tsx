import type { ComponentChildren } from 'preact';
import { editCase, editInside } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import { half } from '../../length/length';
import { stuffOf } from '../../plan/plan';
import type { Case, Inside, Stock } from '../../trade/carcass/case';
import type { CaseField } from '../../trade/carcass/problems';
import { usual } from '../../trade/carcass/usual';
import { type Ask, AskBlank } from '../shared/ask';
import { wordFor } from '../shared/counted';
import * as asks from './asks';

export type CasePart = {
  readonly c: Case;
  readonly job: Job;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly act: (label: string, changes: readonly Change[]) => void;
};

/** The blanks of a sentence about this case. */
const blanks = ({ c, job, open, onOpen }: CasePart) => {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return {
    blank,
    length: (field: CaseField, stands?: Parameters<typeof asks.caseLength>[2]) =>
      blank(asks.caseLength(c, field, stands)),
    of: (stock: Stock) => blank(asks.caseStock(c, stock, job)),
    thick: (stock: Stock) =>
      job.stock.filter((s) => s.id === (c.stocks[stock] ?? c.stocks.side)).flatMap(stuffOf)[0]?.thickness,
  };
};

export function SizeSentence(part: CasePart) {
  const { c } = part;
  const { blank, length } = blanks(part);
  return (
    <section class="fillin" aria-label="Sizes">
      {blank(asks.caseName(c))} with {blank(asks.caseHold(c))}:{' '}
      {c.hold === 'outside' ? (
        <>
          {length('width')} wide, {length('height')} high
        </>
      ) : (
        <>
          bays {length('opening')} wide, {length('clear')} clear inside
        </>
      )}{' '}
      and {length('depth')} deep, {length('feet', usual.overhang)} off the floor. It has{' '}
      {blank(asks.caseCount(c, 'partitions', 'How many partitions'))}{' '}
      {wordFor(c.partitions, 'partition', 'partitions')}
      {c.partitions > 0 && c.hold === 'outside' && <Bays {...part} />}.
    </section>
  );
}

/** Bays are equal unless one is given its own width. */
function Bays(part: CasePart) {
  const { blank } = blanks(part);
  return (
    <>
      , bays{' '}
      {Array.from({ length: part.c.partitions + 1 }, (_, k) => (
        <span key={k}>
          {k > 0 && ', '}
          {blank(asks.caseBay(part.c, k))}
        </span>
      ))}
    </>
  );
}

export function StockSentence(part: CasePart) {
  const { c } = part;
  const { of } = blanks(part);
  const kinds = new Set(c.inside.map((i) => i.kind));
  return (
    <section class="fillin run" aria-label="Stock">
      Sides of {of('side')}, bottom of {of('bottom')}
      {c.hasTop && <>, top of {of('top')}</>}
      {c.partitions > 0 && <>, partitions of {of('partition')}</>}
      {(kinds.has('fixed') || kinds.has('loose')) && <>, shelves of {of('shelf')}</>}
      {kinds.has('trays') && <>, trays of {of('tray')}</>}.
    </section>
  );
}

export function JointSentence(part: CasePart) {
  const { c, act } = part;
  const { length, thick } = blanks(part);
  const side = thick('side');
  return (
    <section class="fillin run" aria-label="Joints">
      Dadoes {length('dado', usual.dado)} deep in the sides
      {c.partitions > 0 && <>, {length('partitionDado', c.dado ?? usual.dado)} for partitions</>}, each{' '}
      {length('fit', usual.fit)} over its sheet.{' '}
      {c.hasTop && <>The top in a rabbet {length('topRabbet', side && half(side))} deep.</>}
      <span class="runacts">
        <Chip
          label={c.hasTop ? 'No top' : 'Add a top'}
          onTap={() => act('Top', editCase(c.id, { hasTop: !c.hasTop }))}
        />
      </span>
    </section>
  );
}

const Chip = ({ label, onTap }: { readonly label: string; readonly onTap: () => void }) => (
  <button type="button" class="chip" onClick={onTap}>
    {label}
  </button>
);

type OptionProps = {
  readonly label: string;
  readonly onRemove: () => void;
  readonly children: ComponentChildren;
};

const Option = ({ label, onRemove, children }: OptionProps) => (
  <section class="fillin run" aria-label={label}>
    {children}
    <span class="runacts">
      <Chip label={`Remove the ${label.toLowerCase()}`} onTap={onRemove} />
    </span>
  </section>
);

/** What may go round a case, each in or out. */
export function Options(part: CasePart) {
  const { c, act } = part;
  const { blank, length, of, thick } = blanks(part);
  const off = (label: string, patch: Parameters<typeof editCase>[1]) => () =>
    act(label, editCase(c.id, patch));
  const side = thick('side');
  return (
    <>
      {c.hasBack && (
        <Option label="Back" onRemove={off('No back', { hasBack: false })}>
          A back of {of('back')} in a rabbet {length('backDeep', usual.backDeep)} deep and{' '}
          {length('backWide')} wide, {length('ease', usual.ease)} room.
        </Option>
      )}
      {c.cleats > 0 && (
        <Option label="Cleats" onRemove={off('No cleats', { cleats: 0 })}>
          {blank(asks.caseCount(c, 'cleats', 'How many cleats'))} {wordFor(c.cleats, 'cleat', 'cleats')} of{' '}
          {of('cleat')}, {length('cleatWide', usual.cleatWide)} wide, in rabbets{' '}
          {length('cleatRabbet', side && half(side))} deep and {length('cleatRabbetWide', thick('cleat'))}{' '}
          wide, notches {length('notchDeep', thick('cleat'))} deep.
        </Option>
      )}
      {c.hasFrame && (
        <Option label="Face frame" onRemove={off('No face frame', { hasFrame: false })}>
          A face frame of {of('frame')}, {length('overhang', usual.overhang)} past the sides. Stiles{' '}
          {length('stile', usual.stile)}, {blank(asks.caseFlag(c, 'stilesOff', 'How the stiles are held'))}
          {c.partitions > 0 && (
            <>
              ; middle {length('middle', usual.stile)},{' '}
              {blank(asks.caseFlag(c, 'middleOff', 'How the middle stile is held'))}
            </>
          )}
          ; rails {length('topRail', usual.rail)} at the top, {length('bottomRail', usual.rail)} at the
          bottom.
        </Option>
      )}
      {c.hasLooseTop && (
        <Option label="Loose top" onRemove={off('No loose top', { hasLooseTop: false })}>
          A loose top of {of('loose')}, {length('looseFront', usual.looseOver)} past the front and{' '}
          {length('looseSide', usual.looseOver)} past each side.
        </Option>
      )}
      {c.hasEdging && (
        <Option label="Edging" onRemove={off('No edging', { hasEdging: false })}>
          Edging of {of('edging')} hanging {length('lip')} below,{' '}
          {blank(asks.caseCount(c, 'mitres', 'Mitred ends'))} {wordFor(c.mitres, 'end', 'ends')} mitred.
        </Option>
      )}
      {c.hasToe && (
        <Option label="Toe board" onRemove={off('No toe board', { hasToe: false })}>
          A toe board of {of('toe')} between the sides, {length('toeBack', usual.toeBack)} back.
        </Option>
      )}
      {c.hasBase && (
        <Option label="Base frame" onRemove={off('No base frame', { hasBase: false })}>
          A lapped frame of {of('base')} with {blank(asks.caseCount(c, 'crosses', 'How many cross members'))}{' '}
          {wordFor(c.crosses, 'cross member', 'cross members')} of {of('cross')},{' '}
          {length('crossWide', usual.crossWide)} wide.
        </Option>
      )}
      <div class="pad-x adds">
        {!c.hasBack && <Add label="A back" onTap={off('A back', { hasBack: true })} />}
        {!c.hasFrame && <Add label="A face frame" onTap={off('A face frame', { hasFrame: true })} />}
        {c.cleats === 0 && <Add label="Cleats" onTap={off('Cleats', { cleats: 1 })} />}
        {!c.hasLooseTop && <Add label="A loose top" onTap={off('A loose top', { hasLooseTop: true })} />}
        {!c.hasEdging && <Add label="Edging" onTap={off('Edging', { hasEdging: true })} />}
        {!c.hasToe && c.feet && <Add label="A toe board" onTap={off('A toe board', { hasToe: true })} />}
        {!c.hasBase && <Add label="A lapped frame" onTap={off('A lapped frame', { hasBase: true })} />}
      </div>
    </>
  );
}

export const Add = ({ label, onTap }: { readonly label: string; readonly onTap: () => void }) => (
  <button type="button" class="btn quiet" onClick={onTap}>
    + {label}
  </button>
);

/** One thing standing in a bay. */
export function InsideSentence(part: CasePart & { readonly i: Inside }) {
  const { c, i, act } = part;
  const { blank } = blanks(part);
  const bay = c.partitions > 0 ? <> in {blank(asks.insideBay(c, i))}</> : null;
  const length = (
    field: Parameters<typeof asks.insideLength>[2],
    title: string,
    stands?: Parameters<typeof asks.caseLength>[2],
  ) =>
    blank(
      asks.insideLength(c, i, field, {
        title: `${title}, ${i.kind} ${c.inside.indexOf(i) + 1}`,
        ...(stands ? { usual: stands } : {}),
      }),
    );
  return (
    <section class="fillin run" aria-label={`In the bays, ${c.inside.indexOf(i) + 1}`}>
      {i.kind === 'fixed' && (
        <>
          A fixed shelf{bay}, its lower face {length('at', 'Case bottom to the shelf')} over the bottom.
        </>
      )}
      {i.kind === 'loose' && (
        <>
          {blank(asks.insideCount(c, i, `How many loose shelves, ${c.inside.indexOf(i) + 1}`))} loose shelves
          {bay}.
        </>
      )}
      {i.kind === 'rail' && (
        <>
          A middle rail{bay}, {length('wide', 'How wide the rail is', usual.rail)} wide, over an opening of{' '}
          {length('at', 'Clear opening under the rail')}.
        </>
      )}
      {i.kind === 'trays' && (
        <>
          Tray grooves{bay}, {length('width', 'How wide the grooves are')} wide and{' '}
          {length('depth', 'How deep they are')} deep, the first{' '}
          {length('first', 'First groove over the bottom')} over the bottom,{' '}
          {length('pitch', 'Groove to groove')} apart, leaving {length('endRoom', 'Room at the top')} at the
          top. Trays {length('slack', 'How much narrower than floor to floor', usual.slack)} slack.
        </>
      )}
      <span class="runacts">
        <Chip
          label="Remove"
          onTap={() => act('Taken out of the bay', editInside(c.id, i.id, { gone: true }))}
        />
      </span>
    </section>
  );
}
