import type { ComponentChildren } from 'preact';
import { editCase } from '../../job/edits';
import { half, zero } from '../../length/length';
import { nailersIn } from '../../trade/carcass/back-how';
import type { Case } from '../../trade/carcass/case';
import { toeOpening } from '../../trade/carcass/stiles-down';
import { jointsOf } from '../../trade/carcass/usual';
import { Chip } from '../../ui/button';
import { Acts, Sentence } from '../shared/sentence';
import { Add } from './add';
import * as asks from './asks';
import { blanks, type CasePart, Said } from './blanks';
import { caseHow } from './how-asks';
import * as words from './option-words';

/** What may go round a case: the field that says it is there, and its sentence. */
type Option = {
  readonly name: keyof typeof words.options;
  readonly field:
    | 'hasBack'
    | 'cleats'
    | 'hasFrame'
    | 'hasLooseTop'
    | 'hasEdging'
    | 'hasToe'
    | 'hasBase'
    | 'hasPlinth'
    | 'hasNailers';
  readonly sentence: (c: Case, blanks: Blanks) => ComponentChildren;
};

type Blanks = ReturnType<typeof blanks>;

const back: Option = {
  name: 'back',
  field: 'hasBack',
  sentence: (c, own) => (
    <>
      {backSaid(c, own)}
      {words.backGoesUp(c)}
    </>
  ),
};

function backSaid(c: Case, { blank, length, of, thick, usual }: Blanks): ComponentChildren {
  const own = { stock: of('back'), how: blank(caseHow(c, 'backHow')) };
  const room = length('ease', usual.ease);
  if (c.backHow === 'applied')
    return words.backLaidOn({ ...own, inset: length('backInset', usual.backInset) });
  if (c.backHow !== 'groove')
    return words.back({
      ...own,
      deep: length('backDeep', usual.backDeep),
      wide: length('backWide'),
      room,
    });
  const joints = jointsOf(c, thick('side') ?? zero, thick('back'));
  return words.backInGroove({
    ...own,
    deep: length('backGroove', usual.backGroove),
    wide: length('backGrooveWide', c.stocks.back ? joints.backGrooveWide : undefined),
    land: length('backLand', usual.backLand),
    room,
  });
}

const cleats: Option = {
  name: 'cleats',
  field: 'cleats',
  sentence: (c, { blank, length, of, thick, usual }) => {
    const side = thick('side');
    return words.cleats(c, {
      count: blank(asks.caseCount(c, 'cleats', words.howMany.cleats)),
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
  field: 'hasFrame',
  sentence: (c, { blank, length, of, usual }) =>
    words.frame(c, {
      stock: of('frame'),
      how: blank(caseHow(c, 'frameHow')),
      meets: blank(caseHow(c, 'frameMeets')),
      clear: length('frameClear', usual.frameClear),
      sill: length('frameSill', zero),
      toe: length('frameToe', toeOpening(c)),
      past: length('overhang', usual.overhang),
      stile: length('stile', usual.stile),
      stilesOff: blank(asks.caseFlag(c, 'stilesOff', words.stilesHeld)),
      middle: length('middle', usual.stile),
      middleOff: blank(asks.caseFlag(c, 'middleOff', words.middleHeld)),
      top: length('topRail', usual.rail),
      bottom: length('bottomRail', usual.rail),
    }),
};

const loose: Option = {
  name: 'loose',
  field: 'hasLooseTop',
  sentence: (_, { length, of, usual }) =>
    words.looseTop({
      stock: of('loose'),
      front: length('looseFront', usual.looseOver),
      side: length('looseSide', usual.looseOver),
    }),
};

const edging: Option = {
  name: 'edging',
  field: 'hasEdging',
  sentence: (c, { blank, length, of }) =>
    words.edging(c, {
      stock: of('edging'),
      lip: length('lip'),
      mitres: blank(asks.caseCount(c, 'mitres', words.howMany.mitres)),
    }),
};

const toe: Option = {
  name: 'toe',
  field: 'hasToe',
  sentence: (c, { blank, length, of, thick, usual }) => {
    const own = {
      stock: of('toe'),
      how: blank(caseHow(c, 'toeHow')),
      back: length('toeBack', usual.toeBack),
    };
    if (c.toeHow !== 'notch') return words.toe(own);
    const frame = c.hasFrame ? thick('frame') : undefined;
    return words.toeInNotches({
      ...own,
      before: length('frontOver', frame ?? zero),
      clear: length('toeClear', usual.toeClear),
    });
  },
};

const base: Option = {
  name: 'base',
  field: 'hasBase',
  sentence: (c, { blank, length, of, usual }) =>
    words.base(c, {
      stock: of('base'),
      crosses: blank(asks.caseCount(c, 'crosses', words.howMany.crosses)),
      cross: of('cross'),
      wide: length('crossWide', usual.crossWide),
    }),
};

const nailers: Option = {
  name: 'nailers',
  field: 'hasNailers',
  sentence: (c, { blank, length, of, thick, usual }) => {
    const own = thick('nailer') ?? zero;
    const joints = jointsOf(c, thick('side') ?? zero, thick('back'));
    const at = {
      count: blank(asks.caseCount(c, 'nailers', words.howMany.nailers)),
      stock: of('nailer'),
      wide: length('nailerWide', usual.nailerWide),
      deep: length('nailerDeep', zero),
    };
    return words.nailers(at, nailersIn(c, joints, own) === 'behind');
  },
};

const plinth: Option = {
  name: 'plinth',
  field: 'hasPlinth',
  sentence: (c, { blank, length, of, thick, usual }) =>
    words.plinth({
      stock: of('base'),
      how: blank(caseHow(c, 'plinthHow')),
      front: length('plinthFront', usual.toeBack),
      before: length('frontOver', (c.hasFrame ? thick('frame') : undefined) ?? zero),
      left: length('plinthLeft', zero),
      right: length('plinthRight', zero),
      back: length('plinthBack', zero),
      crosses: blank(asks.caseCount(c, 'plinthCrosses', words.howMany.plinthCrosses)),
      cross: of('cross'),
    }),
};

const said = [back, nailers, cleats, frame, loose, edging, toe, plinth, base];
const offered = [back, frame, cleats, nailers, loose, edging, toe, plinth, base];

/** A toe board or a plinth stands under a case that is off the floor, a plinth or a lapped frame: one of them. */
function fits(c: Case, { name }: Option): boolean {
  if (name === 'toe') return c.feet !== undefined && !c.hasPlinth;
  if (name === 'nailers') return c.cleats === 0;
  if (name === 'cleats') return !c.hasNailers;
  if (name === 'base') return !c.hasPlinth;
  return name !== 'plinth' || (c.feet !== undefined && !c.hasToe && !c.hasBase);
}

/** What may go round a case, each in or out. */
export function Options(part: CasePart) {
  const { c, act } = part;
  const own = blanks(part);
  const put =
    (label: string, { field }: Option, on: boolean) =>
    () =>
      act(label, editCase(c.id, { [field]: field === 'cleats' ? Number(on) : on }));
  return (
    <>
      {said.map((option) => {
        const { name, off } = words.options[option.name];
        return c[option.field] ? (
          <Sentence key={name} label={name}>
            {option.sentence(c, own)}
            <Acts>
              <Chip label={words.remove(name)} onTap={put(off, option, false)} />
            </Acts>
            <Said {...part} at={option.name} />
          </Sentence>
        ) : null;
      })}
      <div class="pad-x adds">
        {offered.map((option) => {
          const { add } = words.options[option.name];
          return c[option.field] || !fits(c, option) ? null : (
            <Add key={add} label={add} onTap={put(add, option, true)} />
          );
        })}
      </div>
    </>
  );
}
