import { inches, type Length, ratio } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Bank } from './bank';

const usual = {
  reveal: inches(3n, 32n),
  overlayGap: inches(1n, 8n),
  overlay: inches(1n, 2n),
  step: inches(1n, 2n),
  ratio: ratio(5n, 4n),
  trim: inches(1n, 4n),
  band: inches(0n),
  clearance: inches(1n, 2n),
  centre: inches(3n, 2n),
  slideHigh: inches(7n, 4n),
  boxUp: inches(3n, 8n),
  lap: inches(3n, 16n),
  backDado: inches(1n, 4n),
  behind: inches(1n, 2n),
  grooveDeep: inches(1n, 4n),
  grooveUp: inches(3n, 8n),
  grooveFit: inches(1n, 100n),
  ease: inches(1n, 16n),
  play: inches(1n, 4n),
  halfPin: inches(1n, 4n),
  pin: inches(1n, 4n),
  slope: ratio(8n),
  pitch: inches(7n, 8n),
  finger: inches(3n, 8n),
  fingerPlay: inches(3n, 1000n),
  fromTop: inches(2n),
};

/** A slide and the template of a jig are as they were made, whatever the job is in. */
const asMade: readonly string[] = ['clearance', 'centre', 'slideHigh', 'pitch', 'ratio', 'slope'];

const inMillimetres = Object.fromEntries(
  Object.entries(usual).map(([name, figure]) => [
    name,
    asMade.includes(name) ? figure : figureIn('mm', figure as Length),
  ]),
) as typeof usual;

/**
 * Figures that stand in until the user says otherwise, round in the unit of the job. Common practice, no source.
 * Inches; slope 1 in so many.
 */
export const usualBank = ({ units }: Pick<Bank, 'units'>): typeof usual =>
  units === 'mm' ? inMillimetres : usual;
