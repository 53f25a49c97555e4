import { add, half, inches, type Length } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Case } from './case';

const usual = {
  dado: inches(1n, 4n),
  backDeep: inches(3n, 8n),
  backLand: inches(1n, 2n),
  backGroove: inches(1n, 4n),
  backInset: inches(1n, 16n),
  tongue: inches(1n, 4n),
  tongueRoom: inches(1n, 32n),
  scribe: inches(1n, 16n),
  ease: inches(1n, 16n),
  fit: inches(5n, 1000n),
  cleatWide: inches(3n),
  overhang: inches(0n),
  stile: inches(3n, 2n),
  rail: inches(3n, 2n),
  looseOver: inches(1n, 2n),
  toeBack: inches(3n),
  nailerWide: inches(5n, 2n),
  toeClear: inches(1n, 8n),
  frameClear: inches(1n, 8n),
  stopWide: inches(3n, 2n),
  stopBack: inches(3n, 4n),
  stopPlay: inches(1n, 32n),
  slack: inches(1n, 32n),
  shelfPlay: inches(1n, 8n),
  crossWide: inches(5n, 2n),
} as const;

type Usual = Readonly<Record<keyof typeof usual, Length>>;

const inMillimetres = Object.fromEntries(
  Object.entries(usual).map(([name, figure]) => [name, figureIn('mm', figure)]),
) as Usual;

/** Figures that stand in until the user says otherwise, round in the unit of the job. Common practice, no source. */
export const usualOf = ({ units }: Pick<Case, 'units'>): Usual => (units === 'mm' ? inMillimetres : usual);

/**
 * The joints of a case with the usual figures where none is said: a partition's dado is as deep as a side's, the top's
 * rabbet half the side, the back's rabbet a sixteenth over the back, its groove as much as a dado over its sheet.
 *
 * @param side, back thickness, inches
 * @returns inches
 * @example jointsOf(newCase('c'), inches(3n, 4n)).topRabbet // 3/8
 */
export function jointsOf(c: Case, side: Length, back?: Length) {
  const usual = usualOf(c);
  const dado = c.dado ?? usual.dado;
  const fit = c.fit ?? usual.fit;
  return {
    dado,
    partitionDado: c.partitionDado ?? dado,
    bottomRabbet: c.bottomRabbet ?? half(side),
    topRabbet: c.topRabbet ?? half(side),
    backDeep: c.backDeep ?? usual.backDeep,
    backWide: c.backWide ?? (back ? add(back, usual.scribe) : usual.scribe),
    backLand: c.backLand ?? usual.backLand,
    backGroove: c.backGroove ?? usual.backGroove,
    backGrooveWide: c.backGrooveWide ?? (back ? add(back, fit) : fit),
    backInset: c.backInset ?? usual.backInset,
    ease: c.ease ?? usual.ease,
    fit,
    cleatRabbet: c.cleatRabbet ?? half(side),
    tongue: c.tongue ?? usual.tongue,
    tongueRoom: c.tongueRoom ?? usual.tongueRoom,
  };
}

export type Joints = ReturnType<typeof jointsOf>;
