import type { ComponentChildren } from 'preact';
import { Bar } from '../../ui/bar';

type GoneProps = {
  readonly title: string;
  readonly leave: { readonly label: string; readonly onTap: () => void; readonly word?: boolean };
  readonly says: string;
  readonly children?: ComponentChildren;
};

/** In place of a screen whose thing is not there: removed since, or an address from another job. */
export const GonePage = ({ title, leave, says, children }: GoneProps) => (
  <>
    <Bar title={title} leave={leave} />
    <main class="page">
      <p class="pad-x empty-line">{says}</p>
      {children}
    </main>
  </>
);
