import { assertNever } from '../../length/result';
import type { PlainTerm, TermCode } from '../../trade/sums/term-code';
import { wordFor } from './counted';

const plainWords: Record<PlainTerm, string> = {
  // given for a board laid out by hand
  'length-given': 'length given',
  'width-given': 'width given',
  // outside and clear sizes of a case
  'outside-width': 'outside width',
  'outside-height': 'outside height',
  'case-depth': 'depth of the case',
  'clear-width': 'clear width',
  'clear-height': 'clear height',
  'clear-height-held': 'clear height, held',
  'floor-to-case': 'floor to the case',
  'back-height-as-built': 'height to cover, as built',
  'back-width-as-built': 'rabbet to rabbet, as built',
  'groove-floors-as-built': 'to the groove floors, as built',
  'width-to-cover-as-built': 'width to cover, as built',
  recess: 'recess',
  nailer: 'nailer',
  plinth: 'plinth',
  'plinth-deep': 'depth of the plinth',
  'two-rails': 'two rails',
  'left-end': 'in at the left end',
  'right-end': 'in at the right end',
  'behind-the-plinth': 'in at the back',
  'fall-of-floor': 'fall of the floor under it',
  'before-the-sides': 'what stands before the sides',
  'toe-board': 'toe board',
  'clear-of-floor': 'clear of the floor',
  'toe-opening': 'toe opening under the rail',
  'case-to-back': 'case to the back',
  'past-each-side': 'past each side',
  'sides-past-top': 'the sides past the top',
  'past-front': 'past the front',
  'width-said': 'as wide as said',
  'bottom-mark': 'the bottom cut on its mark',
  'side-mark': 'the sides cut on their mark',
  // bays
  bay: 'bay',
  'bay-held': 'bay, held',
  'bay-given': 'bay, given',
  'bay-as-built': 'bay as built',
  bays: 'bays',
  'bays-given': 'bays given',
  'bays-together': 'bays together',
  // boards
  side: 'side',
  'two-sides': 'two sides',
  top: 'top',
  bottom: 'bottom',
  partition: 'partition',
  back: 'back',
  front: 'front',
  cleat: 'cleat',
  'loose-top': 'loose top',
  'base-frame': 'base frame',
  'case-top': 'top of the case',
  'case-bottom': 'bottom of the case',
  edge: 'edge',
  lip: 'lip',
  // joints
  'two-dado-depths': 'two dado depths',
  'two-rabbet-depths': 'two rabbet depths',
  'two-groove-depths': 'two groove depths',
  'bottom-dado-depth': 'dado depth, bottom',
  'bottom-and-top-dado-depths': 'dado depths, bottom and top',
  'own-dado-depths': 'its dado depths',
  'two-tongues': 'two tongues',
  tongue: 'tongue',
  'left-tongue': 'left tongue',
  'right-tongue': 'right tongue',
  'left-dado': 'left dado',
  'right-dado': 'right dado',
  'left-rabbet': 'left rabbet',
  'right-rabbet': 'right rabbet',
  'left-of-top': 'what the rabbet leaves of the top',
  'left-of-bottom': 'what the rabbet leaves of the bottom',
  'back-rabbet': 'back rabbet',
  'behind-groove': 'left behind the groove',
  'back-groove': 'groove for the back',
  'groove-depth': 'groove depth',
  'two-insets': 'set in at both edges',
  fit: 'fit',
  room: 'room',
  ease: 'ease',
  play: 'play',
  'two-end-plays': 'play at both ends',
  'two-end-clearances': 'clear at both ends',
  'two-pin-plates': 'pins at both ends',
  'two-strips': 'strips at both ends',
  'front-room': 'room in front',
  'back-room': 'room behind',
  'front-edging': 'edging on the front',
  slack: 'slack',
  // face frame
  frame: 'frame',
  'face-frame': 'face frame',
  'frame-width': 'frame width',
  'frame-height': 'frame height',
  stile: 'stile',
  'two-stiles': 'two stiles',
  'middle-stile': 'middle stile',
  rail: 'rail',
  'top-rail': 'top rail',
  'bottom-rail': 'bottom rail',
  overhang: 'overhang',
  'two-overhangs': 'two overhangs',
  'frame-opening': 'frame opening',
  'frame-opening-height': 'frame opening, high',
  'frame-opening-as-built': 'frame opening as built',
  'covered-left': 'covered at the left',
  'covered-right': 'covered at the right',
  // filler strips
  'widest-gap': 'the widest gap to the wall',
  'left-to-scribe': 'left to scribe off',
  'least-strip': 'the least a strip is ripped to',
  'case-stands-high': 'height of the case as it stands',
  // opening of a bank
  opening: 'opening',
  'opening-measured-front': 'opening as measured in front',
  'opening-measured-back': 'opening as measured at the back',
  'opening-measured-lesser': 'opening as measured, the lesser side',
  sill: 'sill',
  'lower-edge': 'lower edge over the bottom',
  'over-bottom': 'over the bottom',
  'on-bottom': 'on the bottom',
  'on-shelf': 'on the shelf',
  'shelf-under': 'shelf it stands on',
  'rail-under': 'rail it stands on',
  'bottom-to-shelf': 'bottom to the shelf over it',
  'rail-to-rail': 'bottom rail to the rail over it',
  'depth-to-back': 'depth to the back',
  // fronts
  'end-bands': 'a band at each end',
  'edge-bands': 'a band at each edge',
  'share-of-fronts': 'its share of the fronts together',
  'fronts-kerfs-trims': 'fronts, kerfs and trims',
  // boxes
  'side-slides': 'a slide at each side',
  'box-width': 'box width',
  'box-depth': 'box depth',
  'box-height': 'box height',
  'inside-width': 'inside width',
  'inside-depth': 'inside depth',
  'front-lap': 'lap of the front',
  'front-rabbet': 'rabbet of the front',
  'sanded-off': 'to sand flush',
  'back-dadoes': 'into both sides',
  'behind-back': 'behind the back',
  'under-back': 'under the back',
  'front-groove': 'groove in the front',
  'groove-up': 'groove up',
  // slide sticks
  'front-lower-edge': 'lower edge of the front',
  'box-up': 'box over it',
  'slide-centre': 'middle of the slide up the box',
  'half-slide': 'half the slide',
  // what boxes hang on without slides
  'side-plays': 'play at both sides',
  'side-play': 'play at the side',
  'behind-box': 'behind the box',
  'run-high': 'height as ripped',
  'strip-up': 'groove up the box',
  'strip-play': 'play in the groove',
  'groove-stop': 'left before its groove',
  'strip-room': 'room at its end',
  'block-long': 'length of a block',
  'past-the-side': 'past the side of the box',
  'box-side': 'side of the box',
  'kick-room': 'room under the kicker',
};

/**
 * What a line of a sum is called, to stand after "plus" or "less".
 * @example termWords({ code: 'gaps', count: 3 }) // '3 gaps between'
 */
export function termWords(what: TermCode): string {
  if (typeof what === 'string') return plainWords[what];
  switch (what.code) {
    case 'partitions':
      return wordFor(what.count, 'a partition', 'partitions');
    case 'gaps':
      return wordFor(what.count, 'one gap between', `${what.count} gaps between`);
    case 'mitred-ends':
      return wordFor(what.count, 'a mitred end', 'two mitred ends');
    case 'reveal':
      return what.at === 'both' ? 'two side reveals' : `reveal at the ${what.at}`;
    case 'cover':
      return `covers at ${placeWords(what.at)}`;
    case 'half-partition':
      return `half the partition less the gap at ${placeWords(what.at)}`;
    case 'short-of-partition':
      return `short of the partition at ${placeWords(what.at)}`;
    default:
      return assertNever(what);
  }
}

const placeWords = (at: string): string => (at === 'both' ? 'both sides' : `the ${at}`);
