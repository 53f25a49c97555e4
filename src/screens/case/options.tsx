import type { ComponentChildren } from 'preact';
import { editCase } from '../../job/edits';
import { half } from '../../length/length';
import type { Case } from '../../trade/carcass/case';
import { usual } from '../../trade/carcass/usual';
import * as asks from './asks';
import { blanks, type CasePart } from './blanks';
import { Add, Chip } from './chip';
import * as words from './option-words';

type Patch = Parameters<typeof editCase>[1];
type Name = keyof typeof words.options;

/** What may go round a case: when it is there, how it is put in and taken out, and its sentence. */
type Option = {
  readonly name: Name;
  readonly has: (c: Case) => boolean;
  /** Not offered where there is no room for it. */
  readonly fits?: (c: Case) => boolean;
  readonly add: Patch;
  readonly off: Patch;
  readonly sentence: (part: CasePart) => ComponentChildren;
};

const back: Option = {
  name: 'back',
  has: (c) => c.hasBack,
  add: { hasBack: true },
  off: { hasBack: false },
  sentence: (part) => {
    const { length, of } = blanks(part);
    return words.back({
      stock: of('back'),
      deep: length('backDeep', usual.backDeep),
      wide: length('backWide'),
      room: length('ease', usual.ease),
    });
  },
};

const cleats: Option = {
  name: 'cleats',
  has: (c) => c.cleats > 0,
  add: { cleats: 1 },
  off: { cleats: 0 },
  sentence: (part) => {
    const { blank, length, of, thick } = blanks(part);
    const side = thick('side');
    return words.cleats(part.c, {
      count: blank(asks.caseCount(part.c, 'cleats', words.howMany.cleats)),
      stock: of('cleat'),
      wide: length('cleatWide', usual.cleatWide),
      deep: length('cleatRabbet', side && half(side)),
      across: length('cleatRabbetWide', thick('cleat')),
      notch: length('notchDeep', thick('cleat')),
    });
  },
};

const frame: Option = {
  name: 'frame',
  has: (c) => c.hasFrame,
  add: { hasFrame: true },
  off: { hasFrame: false },
  sentence: (part) => {
    const { blank, length, of } = blanks(part);
    return words.frame(part.c, {
      stock: of('frame'),
      past: length('overhang', usual.overhang),
      stile: length('stile', usual.stile),
      stilesOff: blank(asks.caseFlag(part.c, 'stilesOff', words.stilesHeld)),
      middle: length('middle', usual.stile),
      middleOff: blank(asks.caseFlag(part.c, 'middleOff', words.middleHeld)),
      top: length('topRail', usual.rail),
      bottom: length('bottomRail', usual.rail),
    });
  },
};

const loose: Option = {
  name: 'loose',
  has: (c) => c.hasLooseTop,
  add: { hasLooseTop: true },
  off: { hasLooseTop: false },
  sentence: (part) => {
    const { length, of } = blanks(part);
    return words.looseTop({
      stock: of('loose'),
      front: length('looseFront', usual.looseOver),
      side: length('looseSide', usual.looseOver),
    });
  },
};

const edging: Option = {
  name: 'edging',
  has: (c) => c.hasEdging,
  add: { hasEdging: true },
  off: { hasEdging: false },
  sentence: (part) => {
    const { blank, length, of } = blanks(part);
    return words.edging(part.c, {
      stock: of('edging'),
      lip: length('lip'),
      mitres: blank(asks.caseCount(part.c, 'mitres', words.howMany.mitres)),
    });
  },
};

const toe: Option = {
  name: 'toe',
  has: (c) => c.hasToe,
  fits: (c) => c.feet !== undefined,
  add: { hasToe: true },
  off: { hasToe: false },
  sentence: (part) => {
    const { length, of } = blanks(part);
    return words.toe({ stock: of('toe'), back: length('toeBack', usual.toeBack) });
  },
};

const base: Option = {
  name: 'base',
  has: (c) => c.hasBase,
  add: { hasBase: true },
  off: { hasBase: false },
  sentence: (part) => {
    const { blank, length, of } = blanks(part);
    return words.base(part.c, {
      stock: of('base'),
      crosses: blank(asks.caseCount(part.c, 'crosses', words.howMany.crosses)),
      cross: of('cross'),
      wide: length('crossWide', usual.crossWide),
    });
  },
};

const said = [back, cleats, frame, loose, edging, toe, base];
const offered = [back, frame, cleats, loose, edging, toe, base];

/** What may go round a case, each in or out. */
export function Options(part: CasePart) {
  const { c, act } = part;
  const put = (label: string, patch: Patch) => () => act(label, editCase(c.id, patch));
  return (
    <>
      {said
        .filter(({ has }) => has(c))
        .map(({ name, off, sentence }) => (
          <section key={name} class="fillin run" aria-label={words.options[name].name}>
            {sentence(part)}
            <span class="runacts">
              <Chip
                label={words.remove(words.options[name].name)}
                onTap={put(words.options[name].off, off)}
              />
            </span>
          </section>
        ))}
      <div class="pad-x adds">
        {offered
          .filter(({ has, fits = () => true }) => !has(c) && fits(c))
          .map(({ name, add }) => (
            <Add key={name} label={words.options[name].add} onTap={put(words.options[name].add, add)} />
          ))}
      </div>
    </>
  );
}
