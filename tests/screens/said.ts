import type { ComponentChildren, VNode } from 'preact';

/** What a reader says of a component that has no state: its text without what is hidden from readers. */
export function said(node: ComponentChildren): string {
  if (Array.isArray(node)) return node.map(said).join('');
  if (typeof node !== 'object' || node === null) return typeof node === 'boolean' ? '' : String(node ?? '');
  const { type, props } = node as VNode<Record<string, unknown> & { children?: ComponentChildren }>;
  if (typeof type === 'function') return said((type as (p: unknown) => ComponentChildren)(props));
  return props['aria-hidden'] ? '' : said(props.children);
}
