import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../ui/button';
import type { Page, WidthOf } from '../../ui/paper/ink';
import { openWriter } from '../../ui/paper/writer';
import type { Bench } from '../bench';
import * as words from './printing-words';

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
    setState({ is: 'told', says: await outcome(own.signal) });
  };
  async function outcome(signal: AbortSignal): Promise<string> {
    try {
      const writer = await openWriter();
      const pages = pagesOf(writer.widthOf);
      if (typeof pages === 'string') return pages;
      const of = Array.isArray(pages) ? pages.length : undefined;
      const onPage = (done: number) => setState({ is: 'writing', done, of });
      const pdf = await writer.write(pages, { title: name, stop: signal, onPage });
      return pdf ? words.went[await phone.sharePdf(name, pdf)] : words.stopped;
    } catch {
      return words.failed;
    }
  }
  if (state.is === 'writing')
    return (
      <div class="pad-x">
        <p role="status">{words.writing(state.done, state.of)}</p>
        <Button look="full" label={words.stop} onTap={() => stop.current?.abort()} />
      </div>
    );
  return (
    <div class="pad-x">
      <Button look="main full" icon="share" label={label} onTap={() => void write()} />
      {state.is === 'told' && (
        <p class="note" role="status">
          {state.says}
        </p>
      )}
    </div>
  );
}
