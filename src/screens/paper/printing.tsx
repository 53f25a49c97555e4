import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../ui/button';
import type { Page, WidthOf } from '../../ui/paper/ink';
import { openWriter } from '../../ui/paper/writer';
import type { Bench } from '../bench';
import * as words from './printing-words';
import './printing.css';

type PrintingProps = {
  readonly phone: Pick<Bench['phone'], 'sharePdf'>;
  /** Name of the file, without its ending. */
  readonly name: string;
  readonly label: string;
  /** Made one by one as they are written, or all at once; a sentence says why there are none. */
  readonly pagesOf: (widthOf: WidthOf) => Iterable<Page> | string;
};

type State =
  | { readonly is: 'idle' }
  | { readonly is: 'writing'; readonly done: number; readonly of: number | undefined }
  /** Written, and the share sheet wants another tap. */
  | { readonly is: 'ready'; readonly pdf: Blob }
  | { readonly is: 'told'; readonly says: string };

/** Writes pages as a PDF and hands it out: how far it is, and a way to stop it, while it is written. */
export function Printing({ phone, name, label, pagesOf }: PrintingProps) {
  const [state, setState] = useState<State>({ is: 'idle' });
  const stop = useRef<AbortController | undefined>(undefined);
  useEffect(() => () => stop.current?.abort(), []); // a page that is left hands nothing out later
  const write = async () => {
    const own = new AbortController();
    stop.current = own;
    setState({ is: 'writing', done: 0, of: undefined });
    setState(await outcome(own.signal));
  };
  const told = (says: string): State => ({ is: 'told', says });
  async function handOut(pdf: Blob): Promise<State> {
    const went = await phone.sharePdf(name, pdf);
    return went === 'late' ? { is: 'ready', pdf } : told(words.went[went]);
  }
  async function outcome(signal: AbortSignal): Promise<State> {
    try {
      const writer = await openWriter();
      const pages = pagesOf(writer.widthOf);
      if (typeof pages === 'string') return told(pages);
      const of = Array.isArray(pages) ? pages.length : undefined;
      const onPage = (done: number) => setState({ is: 'writing', done, of });
      const pdf = await writer.write(pages, { title: name, stop: signal, onPage });
      return pdf ? await handOut(pdf) : told(words.stopped);
    } catch {
      return told(words.failed);
    }
  }
  if (state.is === 'writing')
    return (
      <div class="pad-x printing">
        <p role="status">{words.writing(state.done, state.of)}</p>
        <Button look="full" label={words.stop} onTap={() => stop.current?.abort()} />
      </div>
    );
  if (state.is === 'ready')
    return (
      <div class="pad-x printing">
        <Button
          look="main full"
          icon="share"
          label={words.handOut}
          onTap={() => void handOut(state.pdf).then(setState)}
        />
        <p class="note" role="status">
          {words.ready}
        </p>
      </div>
    );
  return (
    <div class="pad-x printing">
      <Button look="main full" icon="share" label={label} onTap={() => void write()} />
      {state.is === 'told' && (
        <p class="note" role="status">
          {state.says}
        </p>
      )}
    </div>
  );
}
