import type { ComponentChildren } from 'preact';
import './rows.css';

type SentenceProps = { readonly label: string; readonly children: ComponentChildren };

/** One sentence of a slip, with its blanks. */
export const Sentence = ({ label, children }: SentenceProps) => (
  <section class="fillin run" aria-label={label}>
    {children}
  </section>
);

/** Small acts at the end of a sentence. */
export const Acts = ({ children }: Pick<SentenceProps, 'children'>) => (
  <span class="runacts">{children}</span>
);
