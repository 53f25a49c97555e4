import { type ComponentChildren, Fragment, options } from 'preact';

/** The space inside a length or a weight: before its fraction, or before its unit. */
const inside = /(\d) (?=\d+\/\d|(mm|lb|kg)\b)/g;

const has = (children: ComponentChildren): boolean =>
  typeof children === 'string' ? children.search(inside) >= 0 : Array.isArray(children) && children.some(has);

const unbroken = (children: ComponentChildren): ComponentChildren => {
  if (Array.isArray(children)) return children.map(unbroken);
  return typeof children === 'string' ? children.replace(inside, '$1\u00a0') : children;
};

/**
 * From here on no length and no weight breaks over a line, whatever sentence it stands in: `38 3/8` has a space that
 * does not break where it comes to stand on the page. Words keep their plain space: what is copied, printed as text or
 * kept has it.
 */
export function keepLengthsWhole(): void {
  const before = options.vnode;
  options.vnode = (vnode) => {
    const { type, props } = vnode;
    if ((typeof type === 'string' || type === Fragment) && has(props.children))
      props.children = unbroken(props.children);
    before?.(vnode);
  };
}
