import { usualIn } from '../job/in-units';
import type { Screws } from '../job/install';
import type { Job } from '../job/job';
import { add, inches, type Length, zero } from '../length/length';
import { figureIn } from '../length/metric-figures';
import type { Result } from '../length/result';
import type { Units } from '../length/units';
import type { ScrewSchedule } from '../trade/buying/screws';
import type { StockRole } from '../trade/carcass/case';
import type { PartName } from '../trade/carcass/part-name';
import { stockOf } from '../trade/carcass/sizes';
import { screwHoles } from '../trade/install/holes';
import { type Schedule, type ScheduleError, screwSchedule } from '../trade/install/schedule';
import { type Screw, type Slant, screwFor, usualBites, usualTipMargin } from '../trade/install/screw';
import { leastWall, type ScrewWall, screwWall } from '../trade/install/wall';
import { putUpOf } from './cleat-on';
import { cleatOf } from './cleat-plan';
import type { Plan } from './plan';
import { fixingsOf } from './put-up-plan';

type Bite = keyof typeof usualBites;

/** What stands in while nothing is said of the screws of one kind: what of the case they go through, and into. */
type Kind = {
  readonly through?: StockRole;
  readonly into?: StockRole;
  readonly bite: Bite;
  /** The part they stand in a row along. */
  readonly along?: PartName['role'];
  /** The part whose ends they go into: they stand across it. */
  readonly part?: 'bottom';
};

const kinds: Readonly<Record<Screws['kind'], Kind>> = {
  cleat: { through: 'cleat', bite: 'stud', along: 'cleat' },
  tocleat: { through: 'cleat', bite: 'face' },
  case: { through: 'side', into: 'side', bite: 'face', along: 'left' },
  top: { through: 'top', into: 'loose', bite: 'solid', along: 'loose' },
  base: { through: 'bottom', into: 'base', bite: 'edge', along: 'bottom' },
  filler: { through: 'side', bite: 'solid', along: 'left' },
  butted: { through: 'side', bite: 'edge', part: 'bottom' },
  other: { bite: 'face' },
};

/** How deep framing of a wall is, as dressed. Source: American Softwood Lumber Standard, a 2 × 4: 3 1/2. */
const framing = inches(7n, 2n);

/** What is reckoned with where nothing is said. Inches. */
export type UsualScrews = {
  readonly through: Length | undefined;
  readonly into: Length | undefined;
  readonly bite: Bite;
  readonly run: Length | undefined;
  /** How thick the part is whose end they go into. */
  readonly part?: Length | undefined;
  /** The least it must bite. */
  readonly leastBite: Length;
};

type Blank = 'through' | 'into';

/** One place screws go: which of the shelf, how many and where, what is drilled; or what is not said yet. Inches. */
export type ScrewPlace = {
  readonly screws: Screws;
  readonly usual: UsualScrews;
  readonly units: Units;
  /** Everything on the head side. */
  readonly stack: Length | undefined;
  /** Into a wall: the shortest that bites enough is taken. */
  readonly isWall: boolean;
  readonly missing: readonly Blank[];
  readonly screw: Screw | undefined;
  /** Nothing while the run or its spacing is not said. */
  readonly row: Result<Schedule, ScheduleError> | undefined;
  readonly holes: ReturnType<typeof screwHoles>;
  /** Of screws into the end of a part: what they leave beside them. */
  readonly wall: ScrewWall | undefined;
  /** How many, as far as that is said. */
  readonly count: number | undefined;
};

/** What stands in for what was not said of some screws: from the case they are in. */
function usualScrews(plan: Pick<Plan, 'job' | 'stuff' | 'parts'>, screws: Screws): UsualScrews {
  const kind = kinds[screws.kind];
  const of = plan.job.cases.find((c) => c.id === screws.of);
  const thick = (role: StockRole | undefined) =>
    of && role && plan.parts.some((p) => p.of === of.id && p.stock === role)
      ? plan.stuff.find((s) => s.id === stockOf(of, role))?.thickness
      : undefined;
  const bite = screws.bite ?? kind.bite;
  const own = (role: PartName['role'] | undefined) =>
    plan.parts.find((p) => p.of === of?.id && p.name.role === role);
  const ends = kind.part && own(kind.part);
  // without cleats a case is fixed through its nailers
  const nailer = kind.along === 'cleat' ? own('nailer') : undefined;
  return {
    through: screws.kind === 'cleat' && screws.of ? cleatOf(plan, screws.of).thick : thick(kind.through),
    into: intoOf(plan, screws) ?? thick(kind.into) ?? (bite === 'stud' ? framing : ends?.length.mark.value),
    bite,
    run: ends ? ends.width.mark.value : (own(kind.along) ?? nailer)?.length.mark.value,
    part: kind.part && thick(kind.part),
    leastBite: figureIn(usualIn(plan.job), usualBites[bite]),
  };
}

/** A case before a cleat on the wall is screwed into that cleat. */
const intoOf = ({ job }: Pick<Plan, 'job'>, { kind, of }: Screws): Length | undefined =>
  kind === 'tocleat' && of ? putUpOf(job, of).cleatThick : undefined;

/** A washer under the head, so thick. Common practice, no source. */
const washer = inches(1n, 16n);
export const usualWasher = (units: Units | undefined): Length => figureIn(units, washer);

/** The screws that hold a case to its wall, as its anchor card says them. */
export function anchorScrews(plan: Pick<Plan, 'job' | 'worked'>, place: string): Screws {
  const { wall, cover, into, gauge, washers } = putUpOf(plan.job, place);
  const many = fixingsOf(plan, place);
  return {
    id: `${place}~anchors`,
    kind: 'cleat',
    of: place,
    bite: wall === 'sheathing' ? 'face' : 'stud',
    ...(cover ? { cover } : {}),
    ...(into && wall === 'sheathing' ? { into } : {}),
    ...(gauge ? { gauge } : {}),
    ...(washers ? { washer: usualWasher(usualIn(plan.job)) } : {}),
    ...(many ? { many } : {}),
  };
}

/**
 * Screws of a job at one place, from the stack in place and the shop's list.
 *
 * @param lengths of the screws on the shelf, inches
 */
export function screwPlace(
  plan: Pick<Plan, 'job' | 'stuff' | 'parts'>,
  screws: Screws,
  lengths: readonly Length[],
): ScrewPlace {
  const usual = usualScrews(plan, screws);
  const units = usualIn(plan.job);
  const through = screws.through ?? usual.through;
  const into = screws.into ?? usual.into;
  const stack = through && add(through, screws.cover ?? zero);
  const isWall = usual.bite === 'stud' || screws.kind === 'cleat';
  const row = rowOf(screws, usual);
  const screw =
    stack && into
      ? screwFor({
          through: stack,
          into,
          sunk: screws.sunk ?? zero,
          leastBite: usual.leastBite,
          margin: figureIn(units, usualTipMargin),
          lengths,
          pick: isWall ? 'shortest' : 'longest',
          slant: Number(screws.slant ?? 0) as Slant,
          units,
          ...(screws.washer ? { washer: screws.washer } : {}),
        })
      : undefined;
  const holes = screwHoles(gaugeOf(screws), screws.wood ?? 'hard');
  const part = screws.part ?? usual.part;
  const least = figureIn(units, leastWall);
  return {
    screws,
    usual,
    units,
    stack,
    isWall,
    missing: [...(through ? [] : (['through'] as const)), ...(into ? [] : (['into'] as const))],
    screw,
    row,
    holes,
    wall: screws.kind === 'butted' && part ? screwWall(part, holes.shank, least) : undefined,
    count: screws.many ?? (row?.ok ? row.value.count : undefined),
  };
}

/** Number 8 unless said otherwise. Common practice, no source. */
export const gaugeOf = ({ gauge = '8' }: Screws): 6 | 8 | 10 => (gauge === '6' ? 6 : gauge === '10' ? 10 : 8);

/** Studs stand where they stand: screws into them are counted, not spaced. */
function rowOf({ run, end, most, rows = 1 }: Screws, usual: UsualScrews): ScrewPlace['row'] {
  const long = run ?? usual.run;
  if (usual.bite === 'stud' || !long || !end || !most) return undefined;
  return screwSchedule({ run: long, end, most, rows });
}

/** Screws of a case. */
export const screwsOf = (job: Pick<Job, 'screws'>, of: string): readonly Screws[] =>
  job.screws.filter((screws) => screws.of === of);

/**
 * What of the screws of a job is to buy: the anchors of every case, and each place whose screw and count are known.
 */
export function screwsToBuy(plan: Plan, lengths: readonly Length[]): readonly ScrewSchedule[] {
  const anchors = plan.job.cases.map(({ id }) => anchorScrews(plan, id));
  return [...anchors, ...plan.job.screws].flatMap((screws): readonly ScrewSchedule[] => {
    const of = plan.job.cases.find((c) => c.id === screws.of);
    const { screw, count } = screwPlace(plan, screws, lengths);
    if (!of || !screw?.pick || !count) return [];
    const own = { long: screw.pick, gauge: gaugeOf(screws), pieces: 1, each: count, along: true } as const;
    return [{ bank: screws.name || of.name, ...own }];
  });
}
