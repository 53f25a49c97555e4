import type { Layout } from '../../trade/grooves/lay-out';

/** What a groove is called: its number, and its run or face where that is needed. */
export function callGroove(layout: Layout, id: string): string {
  const groove = [...layout.grooves, ...layout.dropped.map((d) => d.groove)].find((g) => g.id === id);
  if (!groove) return 'a groove';
  const twins = layout.grooves.some((g) => g.no === groove.no && g.id !== groove.id);
  const face = twins && layout.grooves.some((g) => g.face !== groove.face) ? ` on face ${groove.face}` : '';
  if (groove.wide && groove.called) {
    const which =
      groove.calledNo === undefined ? `the ${groove.called}` : `${groove.called} ${groove.calledNo}`;
    return `${groove.no}, ${which}’s dado${face}`;
  }
  return groove.wide ? `wide ${groove.no}${face}` : `no. ${groove.no}${face}`;
}
