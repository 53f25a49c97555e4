import { useState } from 'preact/hooks';
import { editTimer, type Timer, timersOf } from '../../job/timers';
import { timerStands } from '../../plan/timer-plan';
import { Button, Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskPage } from '../shared/ask-page';
import { leave } from '../shared/leave';
import { countRefused } from '../shared/refused-words';
import { Acts, Sentence } from '../shared/sentence';
import { nameOf, stands } from '../shared/timer-words';
import { useNow } from '../shared/use-now';
import { askToTell, telling } from './tell';
import * as words from './words';

/** What waits of glue and finish, as long as the bottle says: kept with the job, running over a restart. */
export function TimersScreen({ bench }: { readonly bench: Bench }) {
  const [open, setOpen] = useState<Ask>();
  const [may, setMay] = useState(telling);
  const job = bench.job.value;
  const timers = job ? timersOf(job) : [];
  const now = useNow(timers);
  if (!job) return null;
  const add = () => void bench.act(words.added, editTimer(bench.newId(), { name: '', minutes: 0 }));
  return (
    <AskPage
      bench={bench}
      title={words.title}
      sub={job.name}
      tape={job.tape}
      leave={{ label: words.cuts, onTap: () => leave(bench, { at: 'cuts' }) }}
      asked={{ open, close: () => setOpen(undefined) }}
    >
      {timers.length === 0 && <p class="pad-x empty-line">{words.none}</p>}
      {timers.map((timer) => (
        <One key={timer.id} {...{ bench, timer, now, open }} onOpen={setOpen} />
      ))}
      <div class="pad-x look">
        <Button look={timers.length === 0 ? 'main full' : 'full'} icon="plus" label={words.add} onTap={add} />
        <p class="note">{words.asBottle}</p>
        {may === 'default' && (
          <Chip label={words.tellMe} onTap={() => void askToTell().then((said) => setMay(said))} />
        )}
        {timers.length > 0 && may !== 'default' && (
          <p class="note">{may === 'granted' ? words.told : words.notTold}</p>
        )}
      </div>
    </AskPage>
  );
}

type OneProps = {
  readonly bench: Pick<Bench, 'act'>;
  readonly timer: Timer;
  readonly now: number;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

function One({ bench, timer, now, open, onOpen }: OneProps) {
  const at = timerStands(timer, now);
  const edit = (what: string, patch: Parameters<typeof editTimer>[1]) =>
    void bench.act(words.act(what, timer), editTimer(timer.id, patch));
  const begin = () => edit(words.start, { begun: new Date().toISOString(), seen: undefined });
  const blank = (ask: Ask) => <AskBlank key={ask.title} {...{ ask, open, onOpen }} />;
  const { name, hours, minutes } = asksOf(timer);
  return (
    <Sentence label={nameOf(timer)}>
      <p>{words.waits({ name: blank(name), hours: blank(hours), minutes: blank(minutes) })}</p>
      <p class={at.is === 'over' ? 'lit' : ''} role="status">
        {stands(at)}
      </p>
      <Acts>
        {at.is === 'ready' && <Chip label={words.start} onTap={begin} />}
        {(at.is === 'over' || at.is === 'clock-back') && <Chip label={words.startAgain} onTap={begin} />}
        {at.is === 'runs' && <Chip label={words.stop} onTap={() => edit(words.stop, { begun: undefined })} />}
        <Chip label={words.remove} onTap={() => edit(words.remove, { gone: true })} />
      </Acts>
    </Sentence>
  );
}

/** Two timers at once are told apart by their names, so each title has its own. */
function asksOf(timer: Timer) {
  const titled = (what: string) => `${nameOf(timer)}: ${what}`;
  const time = (field: 'hours' | 'minutes'): Ask => ({
    as: 'count',
    title: titled(words.times[field]),
    now: timer[field],
    unit: field === 'hours' ? 'h' : 'min',
    refuse: countRefused(1000, words.times[field].toLowerCase(), 0),
    save: (value) => editTimer(timer.id, { [field]: value }),
  });
  const name: Ask = {
    as: 'text',
    title: titled(words.named),
    now: timer.name ?? '',
    most: 120,
    save: (said) => editTimer(timer.id, { name: said }),
  };
  return { name, hours: time('hours'), minutes: time('minutes') };
}
