export const name = 'Name of the case';
export const hold = 'What is held when the stuff measures thin';
export const holds = {
  outside: { label: 'outside sizes held', hint: 'for an alcove: the openings give' },
  openings: { label: 'openings held', hint: 'for bought slides or boxes: the outside gives' },
} as const;
export const backHow = 'How the back is held';
export const backHows = {
  rabbet: { label: 'in a rabbet', hint: 'goes in from behind, at the last' },
  groove: { label: 'in a groove', hint: 'goes in at the glue-up; shelves end in front of it' },
  applied: { label: 'on the back edges', hint: 'laid on from behind; the case is that much deeper' },
} as const;
export const frameHow = 'How far down the frame runs';
export const frameHows = {
  case: { label: 'as high as the case', hint: 'from its lower end to its top' },
  floor: { label: 'with stiles to the floor', hint: 'the bottom rail ends over the toes' },
} as const;
export const frameMeets = 'How stiles and rails of the frame meet';
export const frameMeetings = {
  butt: { label: 'butted', hint: 'rails end at the stiles' },
  lap: {
    label: 'half-lapped',
    hint: 'rails run from end to end behind the stiles; rails in a bay are butted',
  },
} as const;
export const toeHow = 'How the toe board stands';
export const toeHows = {
  between: { label: 'between the sides', hint: 'the sides stand on the floor to their front edges' },
  notch: { label: 'in notches of the sides', hint: 'over the whole width; toes go under' },
} as const;
export const plinthHow = 'How the plinth comes level';
export const plinthHows = {
  shimmed: { label: 'shimmed', hint: 'cut to its height, shims under it' },
  scribed: { label: 'scribed', hint: 'ripped wider by the fall of the floor and 1/4' },
} as const;
export const byHeight = 'by the height';
export const stockOf = (piece: string): string => `What ${piece} of`;
export const sheet = 'Sheet';
export const measureSheet = 'Measure a sheet';
export const measureStick = 'Measure a stick';
export const asSides = 'as the sides';
export const asRails = 'as the rails';
export const bayWidth = (no: number): string => `Clear width of bay ${no}, shared out when blank`;
export const bay = (no: number): string => `bay ${no}`;
export const held = {
  fixed: { label: 'glued', hint: 'stays for good' },
  off: { label: 'held by screws', hint: 'comes off again' },
} as const;

/** What is counted, beside its figure. */
export const counted = {
  partitions: 'partitions',
  cleats: 'cleats',
  mitres: 'mitres',
  crosses: 'members',
  plinthCrosses: 'members',
  nailers: 'nailers',
} as const;
export const holes = 'holes';
export const pins = 'pins';
export const clips = 'clips';
export const insideCounted = {
  trays: 'trays',
  fixed: 'shelves',
  loose: 'shelves',
  rail: 'rails',
  stop: 'strips',
} as const;
