import { useEffect } from 'preact/hooks';
import { type Caution, cautions } from '../../trade/cautions/caution';
import { Bar } from '../../ui/bar';
import type { Bench } from '../bench';
import { readRoute } from '../routes';
import { type Part, parts } from '../shared/caution-parts';
import { cautionWords } from '../shared/caution-words';
import { leave } from '../shared/leave';
import { poundsIn } from '../shared/pounds';
import { partOf } from './parts';
import * as words from './words';
import './before.css';

type BeforeProps = {
  readonly bench: Bench;
  /** The caution that was tapped, and the address its line stood at. */
  readonly caution: string | undefined;
  readonly from: string | undefined;
};

/** *Before you cut*: all cautions by machine and by moment. It opens at the part of the caution that was tapped. */
export function BeforeScreen({ bench, caution, from }: BeforeProps) {
  const code = cautions.find((c) => c === caution);
  const open = code && partOf(code);
  useEffect(() => {
    const part = document.getElementById(`before-${open}`);
    part?.scrollIntoView();
    part?.focus({ preventScroll: true });
  }, [open]);
  // the address tells where to go when the app was started anew on this page
  const back = () => leave(bench, from === undefined ? { at: 'phone' } : readRoute(from));
  return (
    <>
      <Bar title={words.title} leave={{ label: words.back, word: true, onTap: back }} />
      <main class="page before">
        <p class="pad-x first-words">{words.manualFirst}</p>
        {parts.map((part) => (
          <PartOf key={part} part={part} tapped={part === open ? code : undefined} />
        ))}
      </main>
    </>
  );
}

function PartOf({ part, tapped }: { readonly part: Part; readonly tapped: Caution | undefined }) {
  const { title, lines } = words.partWords[part];
  return (
    <section id={`before-${part}`} class="pad-x" tabIndex={-1}>
      <h2 class="sec">{title}</h2>
      {tapped && <p class="tapped">{cautionWords(tapped).join(' ')}</p>}
      <ul>
        {lines.map((line) => (
          <li key={line}>{poundsIn(line)}</li>
        ))}
      </ul>
    </section>
  );
}
