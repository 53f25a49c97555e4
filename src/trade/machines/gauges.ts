/** Gauges a groove is set on. */
const grooveGauges = {
  'stop-to-near-teeth': 's',
  'other-stop-to-teeth': 'o',
  'fence-scale': 'f',
  'guide-edge': 'g',
  spacer: 'p',
  'fence-mark': 'i',
} as const;

/**
 * What the figure of a setup can be set on, and how each is spelled in the key of a setup. Notes are kept under these
 * keys: no spelling is ever changed, none is used twice, nor is any of those that begin the other pieces of a key: `c`
 * cutter, `h` height, `w` what lies on the stop, `y` a machine of the shop's own.
 */
export const gauges = {
  ...grooveGauges,
  'rip-fence': 'r',
  'length-stop': 'l',
  'long-point': 'm',
  exposed: 'x',
  'near-shoulder': 'n',
  'stick-length': 'k',
  'from-end': 'j',
  'as-said': 'a',
  'fence-to-bit': 'b',
  'row-from-front': 'e',
  'first-slot': 'd',
  'edge-slot': 'q',
  'bit-fence': 't',
  'line-in': 'v',
  'row-middle': 'u',
  'seat-back': 'z',
} as const;

export type Gauge = keyof typeof gauges;
export type GrooveGauge = keyof typeof grooveGauges;
