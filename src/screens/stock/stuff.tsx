import { editStock } from '../../job/edits';
import type { Stock } from '../../job/job';
import { type Ratio, ratio } from '../../length/length';
import { stuffOf } from '../../plan/parts-of-job';
import { kindOf, stiffOf } from '../../plan/stuff-of';
import { perFootOf, type Stuff } from '../../trade/loads/stuff';
import { species } from '../../trade/movement/species';
import { type Ask, AskBlank } from '../shared/ask';
import { inMeasure } from '../shared/pounds';
import { footRefused, stiffRefused } from '../shared/refused-words';
import { speciesWord, stuffs } from '../shared/stuff-words';
import * as words from './stuff-words';

type StuffProps = {
  readonly stock: Stock;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

const kinds = ['ply', 'hardwood', 'softwood', 'pressed'] as const satisfies readonly Stuff[];

const stuffAsk = (stock: Stock): Ask => ({
  as: 'choice',
  title: words.whatStuff,
  now: kindOf(stock),
  choices: kinds.map((value) => ({
    value,
    label: stuffs[value],
    ...(value === 'pressed' ? { hint: words.pressedHint } : {}),
  })),
  save: (stuff) => editStock(stock.id, { stuff: kinds.find((x) => x === stuff) }),
});

const speciesAsk = (stock: Stock): Ask => ({
  as: 'choice',
  title: words.whatSpecies,
  now: stock.species ?? '',
  choices: [
    { value: '', label: words.notSaid },
    ...species.map((value) => ({ value, label: speciesWord(value) })),
  ],
  save: (value) => editStock(stock.id, { species: value || undefined }),
});

const sawnAsk = (stock: Stock): Ask => ({
  as: 'choice',
  title: words.howSawn,
  now: stock.quartersawn ? 'quarter' : 'flat',
  choices: (['flat', 'quarter'] as const).map((value) => ({ value, ...words.sawn[value] })),
  save: (how) => editStock(stock.id, { quartersawn: how === 'quarter' }),
});

const heavyAsk = (stock: Stock): Ask => {
  const [stuff] = stuffOf(stock);
  return inMeasure('foot', {
    as: 'amount',
    title: words.howHeavy,
    now: stock.perFoot,
    usual: stuff && perFootOf(kindOf(stock), stuff.thickness),
    refuse: footRefused,
    save: (perFoot) => editStock(stock.id, { perFoot }),
  });
};

const stiffAsk = (stock: Stock): Ask =>
  inMeasure('stiff', {
    as: 'amount',
    title: words.howStiff,
    now: stock.stiff,
    usual: stiffOf(stock, 'along')?.div(ratio(1_000_000n)) as Ratio | undefined,
    refuse: stiffRefused,
    save: (stiff) => editStock(stock.id, { stiff }),
  });

/** What the stock is of: its weight, its stiffness and its moving go by it. */
export function StuffSlip({ stock, open, onOpen }: StuffProps) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const kind = kindOf(stock);
  const solid =
    kind === 'hardwood' || kind === 'softwood'
      ? { species: blank(speciesAsk(stock)), sawn: blank(sawnAsk(stock)) }
      : undefined;
  return (
    <section class="fillin" aria-label={words.title}>
      {words.line(blank(stuffAsk(stock)), solid, {
        heavy: blank(heavyAsk(stock)),
        stiff: blank(stiffAsk(stock)),
      })}
    </section>
  );
}
