import { Sentence } from '../shared/sentence';
import * as asks from './asks';
import { blanks, type CasePart, Said } from './blanks';
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
