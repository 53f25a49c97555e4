import { useState } from 'preact/hooks';
import { labelsOf, withoutPlace } from '../../plan/label-plan';
import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { leave } from '../shared/leave';
import * as words from './label-words';
import '../shared/rows.css';

type LabelsBench = Pick<Bench, 'plan' | 'phone' | 'go' | 'settings'> & Parameters<typeof leave>[0];

/** What stands on every drawer and tray, from what goes in; to hand out as text. */
export function LabelsScreen({ bench }: { readonly bench: LabelsBench }) {
  const [went, setWent] = useState<keyof typeof words.shared>();
  const plan = bench.plan.value;
  const sets = plan ? labelsOf(plan) : [];
  const homeless = plan ? withoutPlace(plan.job).length : 0;
  const text = words.asText(plan?.job.name ?? '', sets);
  const share = async () => setWent(await bench.phone.share(words.fileName, text));
  return (
    <>
      <Bar
        title={words.title}
        sub={plan?.job.name ?? ''}
        leave={{ label: words.toJob, word: true, onTap: () => leave(bench, { at: 'job' }) }}
      />
      <main class="page">
        {sets.length === 0 && <p class="pad-x empty-line">{words.none}</p>}
        {sets.map((set) => (
          <section key={set.id} aria-label={words.setName(set)}>
            <h2 class="sec pad-x">{words.setName(set)}</h2>
            <ul>
              {set.labels.map((label) => (
                <li key={words.place(label)} class="nextset">
                  <span class="grow">
                    <b>{words.place(label)}</b>
                    <span class={label.things.length > 0 ? 's block' : 's muted block'}>
                      {words.contents(label)}
                    </span>
                  </span>
                </li>
              ))}
            </ul>
          </section>
        ))}
        {homeless > 0 && <p class="pad-x lit">{words.withoutPlace(homeless)}</p>}
        {sets.length > 0 && (
          <div class="pad-x adds">
            <Button look="main full" label={words.share} onTap={() => void share()} />
          </div>
        )}
        {went && (
          <p class="pad-x note" role="status">
            {words.shared[went]}
          </p>
        )}
      </main>
    </>
  );
}
