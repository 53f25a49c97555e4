import { useEffect, useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import type { Codes } from '../../store/handover/cut';
import { handedOf, knownIn, together, withHanded } from '../../store/handover/known';
import { Bar, Segment } from '../../ui/bar';
import { CodeDrawing } from '../../ui/code-drawing';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { useWake } from '../shared/use-wake';
import { codesOf, freshIn, shows, textOf, type What } from './outgoing';

/** One job to another phone, by codes on this screen: no signal, no file. */
export function HandOverScreen({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  const leave = () => bench.go({ at: 'job' });
  return (
    <>
      <Bar title="Hand over" {...(job ? { sub: job.name } : {})} leave={{ label: 'Job', onTap: leave }} />
      {job ? (
        <Out key={job.id} bench={bench} job={job} />
      ) : (
        <p class="page pad-x empty-line">No job in hand. Open one first.</p>
      )}
    </>
  );
}

function Out({ bench, job }: { readonly bench: Bench; readonly job: Job }) {
  const wake = useWake(bench);
  const entries = bench.entries.value;
  const known = handedOf(bench.settings.value.handed, job.id);
  const fresh = freshIn(entries, known);
  const [what, setWhat] = useState<What>(known && fresh > 0 ? 'changes' : 'whole');
  const [size, setSize] = useState<keyof typeof shows>('fine');
  const text = textOf({ job: job.id, entries }, what, known) ?? '';
  const codes = useCodes(text, size);
  const arrived = async () => {
    const now = together(known ?? new Map(), knownIn(entries));
    await bench.keep({ handed: withHanded(bench.settings.value.handed, job.id, now) });
    bench.go({ at: 'job' });
  };
  return (
    <main class="page handover">
      <Shown codes={codes} stands={shows[size].stands} />
      <div class="pad-x handwords">
        <p class="handlead">{leadOf(codes)}</p>
        {known && <Choice what={what} fresh={fresh} onChoose={setWhat} />}
        <p class="note">
          On that phone: Bring a job file in, then Read codes.{' '}
          {wake === 'on' ? 'This screen stays on.' : 'This screen may sleep: tap it now and then.'}
        </p>
        <div class="adds">
          <button type="button" class="btn" onClick={() => setSize(size === 'fine' ? 'large' : 'fine')}>
            {size === 'fine' ? 'Larger squares' : 'Fewer codes'}
          </button>
          <button type="button" class="btn" onClick={() => void bench.phone.share(fileName(job, what), text)}>
            <Icon name="share" />
            As a file
          </button>
        </div>
        <div class="arrived">
          <button type="button" class="btn main full" onClick={() => void arrived()}>
            It has arrived
          </button>
        </div>
      </div>
    </main>
  );
}

const fileName = (job: Job, what: What): string =>
  `${job.name || 'Job'}${what === 'changes' ? ', changes' : ''}`;

type Making = Codes | 'too-long' | undefined;

/** The codes of a text, once they are made. */
function useCodes(text: string, size: keyof typeof shows): Making {
  const [codes, setCodes] = useState<Making>();
  useEffect(() => {
    let current = true;
    if (text)
      void codesOf(text, shows[size]).then((made) => {
        if (current) setCodes(made ?? 'too-long');
      });
    return () => {
      current = false;
    };
  }, [text, size]);
  return codes;
}

function leadOf(codes: Making): string {
  if (codes === 'too-long') return 'This is too long for codes. Hand it over as a file.';
  if (!codes || codes.count === 1) return 'Hold the other phone over this one.';
  return `Hold the other phone over this one until it has all ${codes.count} parts.`;
}

function Shown({ codes, stands }: { readonly codes: Making; readonly stands: number }) {
  const [number, setNumber] = useState(0);
  const count = typeof codes === 'object' ? codes.count : 1;
  useEffect(() => {
    setNumber(0);
    if (count === 1) return;
    const next = () => document.visibilityState === 'visible' && setNumber((now) => now + 1);
    const timer = setInterval(next, stands);
    return () => clearInterval(timer);
  }, [codes]);
  if (codes === 'too-long') return null;
  if (!codes) return <div class="codebox" />;
  return (
    <CodeDrawing text={codes.text(number)} label={count === 1 ? 'One code' : `${count} codes in turn`} />
  );
}

type ChoiceProps = {
  readonly what: What;
  readonly fresh: number;
  readonly onChoose: (what: What) => void;
};

/** Once a job has been handed over, what is new since is enough. */
function Choice({ what, fresh, onChoose }: ChoiceProps) {
  if (fresh === 0) return <p class="note">Nothing new since it was last handed over.</p>;
  return (
    <Segment
      label="What to hand over"
      choices={[
        { label: `${fresh} new`, chosen: what === 'changes', onTap: () => onChoose('changes') },
        { label: 'Whole job', chosen: what === 'whole', onTap: () => onChoose('whole') },
      ]}
    />
  );
}
