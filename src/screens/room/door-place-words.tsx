import type { ComponentChildren as Blank } from 'preact';
import type { DoorWall } from '../../trade/room/door-swing';
import type { Ask } from '../shared/ask';

type Field = 'wall' | 'corner' | 'fromCorner' | 'hung' | 'swing' | 'deep';
export type Asks = Readonly<Record<Field, Ask>>;

export const titles = {
  wall: (no: number): string => `On the way ${no}: the wall it is in, as you face the case`,
  corner: (no: number): string => `On the way ${no}: the corner it is measured from, as you face the case`,
  fromCorner: (no: number): string => `On the way ${no}: how far from that corner its opening begins`,
  hung: (no: number): string => `On the way ${no}: the side its hinges are at`,
  swing: (no: number): string => `On the way ${no}: which way it opens`,
  deep: (): string => 'From the case’s wall to the wall that faces it',
} as const;

export const notSaid = 'not said';

type Labels = Readonly<Record<string, string>>;

const aside = { first: 'the corner at the case’s wall', second: 'the corner away from the case’s wall' };
const across = { first: 'the left corner', second: 'the right corner' };

/** What can be chosen, by code. */
export const choices = (
  wall: DoorWall | undefined,
): Readonly<Record<'wall' | 'corner' | 'hung' | 'swing', Labels>> => ({
  wall: {
    left: 'in the left wall',
    right: 'in the right wall',
    front: 'in the wall that faces the case',
    back: 'in the wall the case stands at',
  },
  corner: wall === 'left' || wall === 'right' ? aside : across,
  hung: { near: 'nearer that corner', far: 'away from that corner' },
  swing: { in: 'into the room', out: 'out of the room' },
});

type Told = {
  readonly blank: (field: Field) => Blank;
  readonly isIn: boolean;
  readonly isDeep: boolean;
};

/** Where it is in the room: of one whose wall is not said, only that is asked. */
export const line = ({ blank, isIn, isDeep }: Told) => (
  <>
    Where it is in the room with the case: {blank('wall')}
    {isIn && (
      <>
        , its opening {blank('fromCorner')} from {blank('corner')}, hung at the side {blank('hung')}, opening{' '}
        {blank('swing')}
      </>
    )}
    .{isDeep && <> From the case’s wall to the wall that faces it: {blank('deep')}.</>}
  </>
);
