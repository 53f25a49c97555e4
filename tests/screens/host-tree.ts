import type { ComponentChildren, VNode } from 'preact';

/** An element as it stands on the page, its components worked out. */
type Host = {
  readonly cls: readonly string[];
  readonly props: Props;
  readonly inside: readonly (Host | string)[];
};
type Props = Record<string, unknown> & { readonly children?: ComponentChildren };

/** What components draw, where their hooks stand still: elements and text, without what is hidden from readers. */
export function hostTree(node: ComponentChildren): readonly (Host | string)[] {
  if (Array.isArray(node)) return node.flatMap(hostTree);
  if (typeof node !== 'object' || node === null)
    return typeof node === 'boolean' || node === undefined || node === null ? [] : [String(node)];
  const { type, props } = node as VNode<Props>;
  if (typeof type === 'function') return hostTree((type as (p: unknown) => ComponentChildren)(props));
  if (props['aria-hidden']) return [];
  return [{ cls: String(props.class ?? '').split(' '), props, inside: hostTree(props.children) }];
}

/** Elements of a class, in the order they stand. */
export const all = (tree: readonly (Host | string)[], cls: string): readonly Host[] =>
  tree.flatMap((host) =>
    typeof host === 'string' ? [] : [...(host.cls.includes(cls) ? [host] : []), ...all(host.inside, cls)],
  );

/** Text of elements, each run of it apart. */
export const texts = (tree: readonly (Host | string)[]): readonly string[] =>
  tree.flatMap((host) => (typeof host === 'string' ? [host] : texts(host.inside)));

export const text = (host: Host | undefined): string => (host ? texts(host.inside).join('') : '');

/** All the words of a screen in one line. */
export const wordsOn = (node: ComponentChildren): string =>
  texts(hostTree(node)).join(' ').replace(/ +/g, ' ');
