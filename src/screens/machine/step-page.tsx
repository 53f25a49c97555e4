import type { Job } from '../../job/job';
import { standIn } from '../../job/room';
import type { FeetStand } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import type { Route } from '../routes';
import { feetSet } from '../shared/block-words';
import * as words from './step-words';

type Page = { readonly label: string; readonly to: Route };

/** Pages of a case: a bank in a case that is none of the job's has none of them. */
function ofCase(job: Job, id: string, what: Operation['what']): readonly Page[] {
  if (!job.cases.some((c) => c.id === id)) return [];
  switch (what) {
    case 'carry-in':
      return [
        { label: words.lift, to: { at: 'lift', id } },
        { label: words.wayIn, to: { at: 'room', page: 'way' } },
      ];
    case 'level':
      return [{ label: words.level, to: { at: 'level', id } }, ...scribed(job, id)];
    case 'scribe':
      return [
        { label: words.scribe, to: { at: 'scribe', id } },
        { label: words.scribeFigures, to: { at: 'scribe', id, step: 'next' } },
      ];
    case 'filler':
      return [{ label: words.scribe, to: { at: 'scribe', id } }];
    case 'cleat':
      return fastened(id);
    case 'anchor':
      return [...fastened(id), ...scribed(job, id)];
    case 'check-again':
      return [
        { label: words.level, to: { at: 'level', id } },
        { label: words.screws, to: { at: 'screws', id } },
      ];
    case 'load':
      return [{ label: words.loads, to: { at: 'loads', id } }];
    default:
      return [];
  }
}

/** Where the screws into the wall are told, and its marks and drills one by one. */
const fastened = (id: string): readonly Page[] => [
  { label: words.screws, to: { at: 'screws', id } },
  { label: words.wallMarks, to: { at: 'room', page: 'wall', step: 'next' } },
  { label: words.screwFigures, to: { at: 'screws', id, step: 'next' } },
];

/** A case that has an edge to scribe: a gap to a wall was read, or an overhang said. */
function scribed(job: Job, id: string): readonly Page[] {
  const { gaps, hangLeft, hangRight } = standIn(job, id);
  const has = gaps.length > 0 || hangLeft !== undefined || hangRight !== undefined;
  return has ? [{ label: words.scribe, to: { at: 'scribe', id } }] : [];
}

/** Pages where the figures of a step of putting up stand. */
function pagesOf(job: Job, { what, part }: Operation): readonly Page[] {
  const id = part.replace(/~bench$/, '');
  switch (what) {
    case 'cure':
    case 'finish':
      return [{ label: words.finish, to: { at: 'finish', id } }];
    case 'load':
      return [
        ...ofCase(job, id, what),
        ...job.banks
          .filter((bank) => (bank.of ?? bank.id) === id)
          .map((bank): Page => ({ label: words.inDrawers(bank.name), to: { at: 'contents', id: bank.id } })),
      ];
    case 'label':
      return [{ label: words.labels, to: { at: 'labels' } }];
    case 'look-back':
      return [{ label: words.lookBack, to: { at: 'lookback' } }];
    default:
      return ofCase(job, id, what);
  }
}

type StepProps = {
  readonly go: Bench['go'];
  readonly job: Job;
  readonly op: Operation;
  /** How its case stands, where it was read foot by foot. */
  readonly feet: FeetStand | undefined;
};

/** The first foot that is not set yet, whatever else a case waits for before it is level. */
function nextFoot({ what, part }: Operation, feet: FeetStand | undefined): readonly Page[] {
  if (what !== 'level' || !feet || feet.set === feet.of) return [];
  const to: Route = { at: 'level', id: part.replace(/~bench$/, ''), foot: 'next' };
  return [{ label: feetSet(feet), to }];
}

export const StepPage = ({ go, job, op, feet }: StepProps) => (
  <>
    {[...nextFoot(op, feet), ...pagesOf(job, op)].map(({ label, to }) => (
      <Chip key={label} label={label} onTap={() => go(to)} />
    ))}
  </>
);
