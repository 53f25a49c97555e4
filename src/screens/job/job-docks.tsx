import { editJob } from '../../job/edits';
import { usualIn } from '../../job/in-units';
import type { Job } from '../../job/job';
import { type Tape, tapes, unitsOf } from '../../length/tape';
import { marksChosen } from '../../plan/usual-kept';
import { ChoiceDock } from '../../ui/dock';
import type { Bench } from '../bench';
import { TextDock } from '../shared/ask-dock';
import * as words from './later-words';

/** What is asked for below the job's page. */
export type Open = 'name' | 'place' | 'tape' | undefined;

type DockProps = {
  readonly act: Bench['act'];
  readonly job: Job;
  /** Something of it is cut: its usual figures stay. */
  readonly cut: boolean;
  readonly onClose: () => void;
};

/** Where the job's name, its place and its marks are given. */
export function JobDocks({ open, ...props }: DockProps & { readonly open: Open }) {
  if (open === 'tape') return <TapeDock {...props} />;
  return open && <NameDock {...props} what={open} />;
}

function NameDock({ act, job, what, onClose }: DockProps & { readonly what: 'name' | 'place' }) {
  const name = what === 'name';
  return (
    <TextDock
      title={name ? words.jobName : words.place}
      now={job[what]}
      most={120}
      onDone={(text) => void act(name ? words.jobNamed : words.placeGiven, editJob({ [what]: text }))}
      onClose={onClose}
    />
  );
}

const TapeDock = ({ act, job, cut, onClose }: DockProps) => (
  <ChoiceDock
    title={words.tapeTitle}
    choices={tapes
      .filter((t) => t !== '0.001')
      .map((value) => ({
        value,
        label: unitsOf(value) === 'mm' ? value : words.inInches(value),
        ...(cut && unitsOf(value) !== usualIn(job) ? { hint: words.usualStay(usualIn(job)) } : {}),
      }))}
    chosen={job.tape}
    onChoose={(tape: Tape) => {
      void act(words.tapeChosen(tape), marksChosen(job, tape, cut));
      onClose();
    }}
    onClose={onClose}
  />
);
