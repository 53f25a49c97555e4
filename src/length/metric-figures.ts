import { fromMillimetres, type Length } from './length';
import { toStored } from './stored';
import type { Units } from './units';

/** Figures of the trade as a shop in inches has them, and what a metric shop has: hundredths of a millimetre. */
const pairs =
  '3/1000=10 1/200=10 1/125=20 1/100=25 3/200=40 1/50=50 1/64=40 1/32=80 3/64=120 1/16=150 3/32=200 1/8=300 ' +
  '5/32=400 3/16=500 1/4=600 3/8=1000 1/2=1200 3/4=2000 1=2500 5/4=3200 3/2=4000 7/4=4500 2=5000 5/2=6500 3=7500 ' +
  '6=15000 24=60000 48=122000 96=244000';

const metric: ReadonlyMap<string, Length> = new Map(
  pairs.split(' ').map((pair) => {
    const [figure = '', hundredths = ''] = pair.split('=');
    return [figure, fromMillimetres(BigInt(hundredths), 100n)];
  }),
);

/**
 * A limit, or a figure that stands in until one is said, in the unit system of a job: a metric shop has round
 * millimetres in its place, not a conversion. What is not in the list is as it is. Common practice, no source.
 *
 * @param figure as a shop in inches has it
 * @example figureIn('mm', inches(3n, 8n)) // 10 mm
 */
export const figureIn = (units: Units | undefined, figure: Length): Length =>
  (units === 'mm' && metric.get(toStored(figure))) || figure;
