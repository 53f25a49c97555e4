import { useEffect, useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import { picturesHeld } from '../../job/pictures';
import type { Codes } from '../../store/handover/cut';
import { handedOf, knownIn, together, withHanded } from '../../store/handover/known';
import { Bar, Segment } from '../../ui/bar';
import { Button } from '../../ui/button';
import { CodeDrawing } from '../../ui/code-drawing';
import type { Bench } from '../bench';
import { useWake } from '../shared/use-wake';
import { codesOf, freshIn, shows, textOf, type What } from './outgoing';
import * as words from './words';
import './handover.css';

/** One job to another phone, by codes on this screen: no signal, no file. */
export function HandOverScreen({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  const leave = () => bench.go({ at: 'job' });
  return (
    <>
      <Bar
        title={words.handOver}
        {...(job ? { sub: job.name } : {})}
        leave={{ label: words.toJob, onTap: leave }}
      />
      {job ? (
        <Out key={job.id} bench={bench} job={job} />
      ) : (
        <p class="page pad-x empty-line">{words.noJob}</p>
      )}
    </>
  );
}

type OutProps = { readonly bench: Bench; readonly job: Job };

function Out({ bench, job }: OutProps) {
  const wake = useWake(bench);
  const entries = bench.entries.value;
  const known = handedOf(bench.settings.value.handed, job.id);
  const fresh = freshIn(entries, known);
  const stay = picturesHeld(job).count;
  const [what, setWhat] = useState<What>(known && fresh > 0 ? 'changes' : 'whole');
  const [size, setSize] = useState<Size>('fine');
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
        <p class="note">{words.there(wake === 'on')}</p>
        {stay > 0 && <p class="note">{words.picturesStay(stay)}</p>}
        <Adds
          size={size}
          onSize={setSize}
          onFile={() => void bench.phone.share(words.fileName(job.name, what), text)}
        />
        <div class="arrived">
          <Button label={words.arrived} look="main full" onTap={() => void arrived()} />
        </div>
      </div>
    </main>
  );
}

type Size = keyof typeof shows;
type AddsProps = {
  readonly size: Size;
  readonly onSize: (size: Size) => void;
  readonly onFile: () => void;
};

/** Codes of another size, or a file in place of them. */
const Adds = ({ size, onSize, onFile }: AddsProps) => (
  <div class="adds">
    <Button label={words.otherSize[size]} onTap={() => onSize(size === 'fine' ? 'large' : 'fine')} />
    <Button label={words.asFile} icon="share" onTap={onFile} />
  </div>
);

type Making = Codes | 'too-long' | undefined;

/** The codes of a text, once they are made. */
function useCodes(text: string, size: Size): Making {
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

const leadOf = (codes: Making): string =>
  codes === 'too-long' ? words.tooLong : words.lead(codes?.count ?? 1);

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
  return <CodeDrawing text={codes.text(number)} label={words.shown(count)} />;
}

type ChoiceProps = {
  readonly what: What;
  readonly fresh: number;
  readonly onChoose: (what: What) => void;
};

/** Once a job has been handed over, what is new since is enough. */
function Choice({ what, fresh, onChoose }: ChoiceProps) {
  if (fresh === 0) return <p class="note">{words.nothingNew}</p>;
  return (
    <Segment
      label={words.whatGoes}
      choices={[
        { label: words.fresh(fresh), chosen: what === 'changes', onTap: () => onChoose('changes') },
        { label: words.wholeJob, chosen: what === 'whole', onTap: () => onChoose('whole') },
      ]}
    />
  );
}
