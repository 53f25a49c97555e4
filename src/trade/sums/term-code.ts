/** What a line of a sum stands for, where that alone says it. */
export type PlainTerm =
  // given for a board laid out by hand
  | 'length-given'
  | 'width-given'
  // outside and clear sizes of a case
  | 'outside-width'
  | 'outside-height'
  | 'case-depth'
  | 'clear-width'
  | 'clear-height'
  | 'clear-height-held'
  | 'floor-to-case'
  | 'back-height-as-built'
  | 'back-width-as-built'
  | 'groove-floors-as-built'
  | 'width-to-cover-as-built'
  | 'case-to-back'
  | 'past-each-side'
  | 'past-front'
  | 'width-said'
  // what the mark of the bottom, or of a side, adds to the drawing
  | 'bottom-mark'
  | 'side-mark'
  // bays
  | 'bay'
  | 'bay-held'
  | 'bay-given'
  | 'bay-as-built'
  | 'bays'
  | 'bays-given'
  | 'bays-together'
  // boards
  | 'side'
  | 'two-sides'
  | 'top'
  | 'bottom'
  | 'partition'
  | 'back'
  | 'front'
  | 'cleat'
  | 'loose-top'
  | 'base-frame'
  | 'case-top'
  | 'case-bottom'
  | 'edge'
  | 'lip'
  // joints
  | 'two-dado-depths'
  | 'two-rabbet-depths'
  | 'two-groove-depths'
  | 'bottom-dado-depth'
  | 'bottom-and-top-dado-depths'
  | 'own-dado-depths'
  | 'left-dado'
  | 'right-dado'
  | 'back-rabbet'
  | 'behind-groove'
  | 'back-groove'
  | 'groove-depth'
  | 'two-insets'
  | 'fit'
  | 'room'
  | 'ease'
  | 'play'
  | 'slack'
  // face frame
  | 'frame'
  | 'face-frame'
  | 'frame-width'
  | 'frame-height'
  | 'stile'
  | 'two-stiles'
  | 'middle-stile'
  | 'rail'
  | 'top-rail'
  | 'bottom-rail'
  | 'overhang'
  | 'two-overhangs'
  | 'frame-opening'
  | 'frame-opening-height'
  | 'frame-opening-as-built'
  | 'covered-left'
  | 'covered-right'
  // filler strips
  | 'widest-gap'
  | 'left-to-scribe'
  | 'least-strip'
  | 'case-stands-high'
  // opening of a bank
  | 'opening'
  | 'opening-measured-front'
  | 'opening-measured-back'
  | 'opening-measured-lesser'
  | 'sill'
  | 'lower-edge'
  | 'over-bottom'
  | 'on-bottom'
  | 'on-shelf'
  | 'shelf-under'
  | 'rail-under'
  | 'bottom-to-shelf'
  | 'rail-to-rail'
  | 'depth-to-back'
  // fronts
  | 'end-bands'
  | 'edge-bands'
  | 'share-of-fronts'
  | 'fronts-kerfs-trims'
  // boxes
  | 'side-slides'
  | 'box-width'
  | 'box-depth'
  | 'box-height'
  | 'inside-width'
  | 'inside-depth'
  | 'front-lap'
  | 'back-dadoes'
  | 'behind-back'
  | 'under-back'
  | 'front-groove'
  | 'groove-up'
  // slide sticks
  | 'front-lower-edge'
  | 'box-up'
  | 'slide-centre'
  | 'half-slide';

/** A side of an opening, or its left and right together in one line. */
export type SideOf = 'left' | 'right' | 'both';

/** What a line of a sum stands for. Its words are in `src/screens/shared/sum-words.ts`. */
export type TermCode =
  | PlainTerm
  /** So many together, >= 0. */
  | { readonly code: 'partitions' | 'gaps' | 'mitred-ends'; readonly count: number }
  /** A gap left free round a front, or how far the front covers the case there. */
  | { readonly code: 'reveal' | 'cover'; readonly at: SideOf | 'top' | 'bottom' }
  /** Of a partition two fronts share: the half one covers, or how far it stands short of it. */
  | { readonly code: 'half-partition' | 'short-of-partition'; readonly at: SideOf };
