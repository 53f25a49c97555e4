import type { Settings } from '../../job/settings';
import { Bar, Segment } from '../../ui/bar';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { PicturedOut } from '../shared/pictured-out';
import { CopyOut, LastCopied } from './copy-out';
import { HomeScreen } from './home-screen';
import { JoblessPictures } from './jobless-pictures';
import { LeftClosed } from './left-closed';
import * as words from './phone-words';

/** How this phone likes things: finish, hand, text. */
export function PhoneScreen({ bench }: { readonly bench: Bench }) {
  const copies = bench.incoming.copies.value;
  return (
    <>
      <Bar title={words.title} leave={{ label: words.back, onTap: () => bench.go({ at: 'job' }) }} />
      <main class="page prefs pad-x">
        <LeftClosed bench={bench} />
        <Likings settings={bench.settings.value} keep={bench.keep} />
        <a class="btn" href="#/rule">
          {words.rule}
        </a>
        <h2 class="sec">{words.cautions}</h2>
        <Button label={words.beforeYouCut} onTap={() => bench.go({ at: 'before' })} />
        <h2 class="sec">{words.copy}</h2>
        <LastCopied copies={copies} />
        <CopyOut copies={copies} />
        <PicturedOut copies={copies} name={words.allPictured} label={words.copyPictured} />
        <JoblessPictures bench={bench} />
        <a class="btn" href="#/import">
          {words.bringIn}
        </a>
        <HomeScreen phone={bench.phone} />
        <h2 class="sec">{words.whatIsKept}</h2>
        <p>{words.kept[bench.phone.kept.value]}</p>
        <p>{words.keptIn[bench.phone.keptIn.value]}</p>
        <p class="note">{words.staysHere}</p>
        <p class="note">{words.typeface}</p>
        <a class="btn" href="./notices.txt">
          {words.licences}
        </a>
      </main>
    </>
  );
}

type LikingsProps = { readonly settings: Settings; readonly keep: Bench['keep'] };

const Likings = ({ settings, keep }: LikingsProps) => (
  <>
    <Liking
      title={words.finish}
      names={words.finishes}
      order={['phone', 'satin', 'blued']}
      now={settings.theme}
      onPick={(theme) => void keep({ theme })}
    />
    <p class="note">{words.finishNote}</p>
    <Liking
      title={words.hand}
      names={words.hands}
      order={['left', 'right']}
      now={settings.hand}
      onPick={(hand) => void keep({ hand })}
    />
    <Liking
      title={words.text}
      names={words.texts}
      order={['phone', 'large']}
      now={settings.text}
      onPick={(text) => void keep({ text })}
    />
    <Liking
      title={words.aloud}
      names={words.aloudWhen}
      order={['tap', 'each']}
      now={settings.aloud}
      onPick={(aloud) => void keep({ aloud })}
    />
    <p class="note">{words.aloudNote}</p>
    <Liking
      title={words.calipers}
      names={words.caliperUnits}
      order={['tape', 'in', 'mm']}
      now={settings.calipers}
      onPick={(calipers) => void keep({ calipers })}
    />
    <p class="note">{words.calipersNote}</p>
  </>
);

type LikingProps<T extends string> = {
  readonly title: string;
  readonly names: Readonly<Record<T, string>>;
  readonly order: readonly T[];
  readonly now: T;
  readonly onPick: (value: T) => void;
};

/** One of a few, under its heading. */
const Liking = <T extends string>({ title, names, order, now, onPick }: LikingProps<T>) => (
  <>
    <h2 class="sec">{title}</h2>
    <Segment
      label={title}
      choices={order.map((value) => ({
        label: names[value],
        chosen: value === now,
        onTap: () => onPick(value),
      }))}
    />
  </>
);
