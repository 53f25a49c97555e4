import type { Token } from '../../length/expr';
import { readLength } from '../../length/read';
import type { Units } from '../../length/units';
import { Inline, Mixed } from '../../ui/mixed';
import { unitWords } from '../../ui/pad-words';

type WorkingProps = {
  readonly tokens: readonly Token[];
  readonly call: (id: string) => string;
  readonly small?: boolean;
  /** What the figure in hand is in, where it does not say so itself. */
  readonly unit?: Units | undefined;
};

/** A sum written out: figures stacked, brackets visible, lines by name. */
export const Working = ({ tokens, call, small, unit }: WorkingProps) => (
  <span class="ex">
    {tokens.map((token, k) => (
      <Shown key={k} token={token} call={call} small={small ?? false} />
    ))}
    {unit && <small class="unit">{unitWords[unit]}</small>}
  </span>
);

type ShownProps = { readonly token: Token; readonly call: (id: string) => string; readonly small: boolean };

function Shown({ token, call, small }: ShownProps) {
  if (token.is === 'line') return <span class="ref">{call(token.id)}</span>;
  if (token.is === 'op' || token.is === 'bracket')
    return <span class="sign">{token.text === '-' ? '−' : token.text}</span>;
  if (token.is === 'count') return <span class="count">{token.text}</span>;
  return <Figure text={token.text} small={small} />;
}

/** A length as it was given: feet, millimetres and decimals stay what they were. */
function Figure({ text, small }: { readonly text: string; readonly small: boolean }) {
  const read = readLength(text);
  const asGiven = /[.,]|mm|cm|ft|'|′/i.test(text) || !read.ok;
  if (asGiven) return <span class="dec">{read.ok ? read.value.echo : text}</span>;
  return small ? (
    <Inline value={read.value.value} tape="1/64" />
  ) : (
    <Mixed value={read.value.value} tape="1/64" />
  );
}
