import { half, inches, isPositive, type Length, type Ratio, ratio } from '../../length/length';
import { product, shareOf } from './ratios';
import { cubeRootUp } from './roots';
import { type Edging, type Loaded, type Sag, sagOf } from './sag';

/** What would bring a shelf under its limit, or how far it would bring it. Inches, pounds. */
export type SagCure =
  /** With a strip along its front edge it would sag so far; `goes`: not past what is allowed. */
  | { readonly code: 'edging'; readonly sag: Length; readonly goes: boolean }
  /** An upright in the middle, the shelf cut there: half the span, half the load. */
  | { readonly code: 'upright'; readonly sag: Length; readonly goes: boolean }
  /** The least thickness that would do, of the same stuff. */
  | { readonly code: 'thicker'; readonly thick: Length }
  | { readonly code: 'shorter'; readonly span: Length }
  | { readonly code: 'lighter'; readonly load: Ratio };

const thickGrain = inches(1n, 32n);

/**
 * What helps a shelf that sags too far or carries too much, each by itself; none for one that does neither, or that is
 * refused. The thickness is offered where there is no strip on the edge: sag then goes by its cube. No strip and no
 * thickness helps one that carries more than a shelf may.
 *
 * @param at inches, pounds; @param strip one that could be stuck on, where there is none
 * @param most what one shelf may carry whatever it sags, pounds
 * @example sagCures(shelf, strip) // Example 5 of loads
 */
export function sagCures(at: Loaded, strip: Edging, most?: Ratio): readonly SagCure[] {
  const now = sagOf(at);
  const heavy = most?.lt(at.load) ?? false;
  if (!now.ok || !(now.value.over || heavy)) return [];
  const edged = at.edging ? undefined : tried({ ...at, edging: strip });
  const halfLoad = product(at.load, ratio(1n, 2n));
  const halved = most?.lt(halfLoad) ? undefined : tried({ ...at, span: half(at.span), load: halfLoad });
  const upright: readonly SagCure[] = halved ? [{ code: 'upright', ...halved }] : [];
  const lighter: SagCure = {
    code: 'lighter',
    load: most?.lt(now.value.mostLoad) ? most : now.value.mostLoad,
  };
  if (heavy) return [...upright, lighter];
  return [
    ...(edged ? [{ code: 'edging', ...edged } as const] : []),
    ...upright,
    ...(at.edging ? [] : [{ code: 'thicker', thick: thickFor(at, now.value) } as const]),
    ...(isPositive(now.value.span) ? [{ code: 'shorter', span: now.value.span } as const] : []),
    lighter,
  ];
}

const tried = (at: Loaded): { readonly sag: Length; readonly goes: boolean } | undefined => {
  const found = sagOf(at);
  return found.ok ? { sag: found.value.sag, goes: !found.value.over } : undefined;
};

/** t³ grows as the sag has to shrink; up to a 32nd. */
const thickFor = ({ thick }: Loaded, { sag, allowed }: Sag): Length =>
  cubeRootUp(
    shareOf(thick.mul(thick).mul(thick).mul(sag) as unknown as Ratio, allowed as unknown as Ratio),
    thickGrain,
  );
