import { editCase } from '../../job/edits';
import { half } from '../../length/length';
import { Chip } from '../../ui/button';
import { Acts, Sentence } from '../shared/sentence';
import * as asks from './asks';
import { blanks, type CasePart, Said } from './blanks';
import * as join from './join-words';
import * as options from './option-words';
import * as words from './sentence-words';

export function SizeSentence(part: CasePart) {
  const { c } = part;
  const { blank, length, usual } = blanks(part);
  const outside = c.hold === 'outside';
  return (
    <section class="fillin" aria-label={words.sizes}>
      {words.size(c, {
        name: blank(asks.caseName(c)),
        hold: blank(asks.caseHold(c)),
        wide: length(outside ? 'width' : 'opening'),
        high: length(outside ? 'height' : 'clear'),
        deep: length('depth'),
        feet: length('feet', usual.overhang),
        partitions: blank(asks.caseCount(c, 'partitions', options.howMany.partitions)),
        bays: c.partitions > 0 && outside && <Bays {...part} />,
      })}
      <Said {...part} at="sizes" />
    </section>
  );
}

/** Bays are equal unless one is given its own width. */
function Bays(part: CasePart) {
  const { blank } = blanks(part);
  return words.bays(
    Array.from({ length: part.c.partitions + 1 }, (_, k) => (
      <span key={k}>
        {k > 0 && ', '}
        {blank(asks.caseBay(part.c, k))}
      </span>
    )),
  );
}

export function StockSentence(part: CasePart) {
  return (
    <Sentence label={words.stock}>
      {words.stocks(part.c, blanks(part).of)}
      <Said {...part} at="stock" />
    </Sentence>
  );
}

export function JointSentence(part: CasePart) {
  const { c, act } = part;
  const { blank, length, thick, usual } = blanks(part);
  const side = thick('side');
  return (
    <Sentence label={words.joints}>
      {join.meets(c, {
        bottom: blank(asks.caseJoint(c, 'bottom')),
        bottomPast: length('bottomPast', usual.overhang),
        top: blank(asks.caseJoint(c, 'top')),
        topPast: length('topPast', usual.overhang),
        partition: blank(asks.caseJoint(c, 'partition')),
        shelf: blank(asks.caseJoint(c, 'shelf')),
      })}
      {join.deep(c, {
        dado: length('dado', usual.dado),
        partition: length('partitionDado', c.dado ?? usual.dado),
        fit: length('fit', usual.fit),
        bottom: length('bottomRabbet', side && half(side)),
        top: length('topRabbet', side && half(side)),
      })}
      {join.tongues(c, {
        thick: length('tongue', usual.tongue),
        room: length('tongueRoom', usual.tongueRoom),
        bottom: blank(asks.caseHugs(c, 'bottom')),
        partition: blank(asks.caseHugs(c, 'partition')),
        shelf: blank(asks.caseHugs(c, 'shelf')),
      })}
      <Acts>
        <Chip
          label={words.topChip(c.hasTop)}
          onTap={() => act(words.topChanged, editCase(c.id, { hasTop: !c.hasTop }))}
        />
      </Acts>
      <Said {...part} at="joints" />
    </Sentence>
  );
}
