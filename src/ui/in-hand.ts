import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Units } from '../length/units';

/** A reading as calipers typed it; without a unit it is in that of the tape. */
export type TypedReading = { readonly text: string; readonly unit?: Units | undefined };

/** What came of a reading: kept at once, put into the field to be looked at, or not wanted there. */
export type Came = 'taken' | 'shown' | 'not-above-zero' | 'no-length-wanted';

/** A place a reading can go. */
export type InHand = {
  /** Its typed field, where it has one: strokes that go into any other field are that field's own. */
  readonly field?: () => HTMLInputElement | null;
  /** Called before the first stroke of a burst has done anything; what it hands back puts the reading in its place. */
  readonly begin: () => (reading: TypedReading) => Came;
};

let fields: readonly InHand[] = [];

/** The field in hand: the one opened last. */
export const inHand = (): InHand | undefined => fields[fields.length - 1];

/** Makes a field the one in hand while it stands. */
export function useInHand(field: InHand): void {
  const latest = useRef(field);
  latest.current = field;
  useLayoutEffect(() => {
    const standing: InHand = {
      field: () => latest.current.field?.() ?? null,
      begin: () => latest.current.begin(),
    };
    fields = [...fields, standing];
    return () => {
      fields = fields.filter((other) => other !== standing);
    };
  }, []);
}
