import type { Job } from '../../job/job';
import { forDrawing } from '../../length/length';
import { writeLength } from '../../length/write';
import type { AtSpot } from '../../trade/room/spot';
import { Icon } from '../../ui/icon';
import { ScribeDrawing } from '../../ui/scribe-drawing';
import * as words from './words';

export const Wrong = ({ says }: { readonly says: string }) => (
  <p class="wrongline">
    <Icon name="warn" />
    {says}
  </p>
);

type DrawnProps = {
  readonly side: 'left' | 'right';
  readonly off: readonly AtSpot[];
  readonly tape: Job['tape'];
};

/** The line, drawn once there is more than one place to draw it through. */
export const Drawn = ({ side, off, tape }: DrawnProps) =>
  off.length > 1 ? (
    <>
      <ScribeDrawing
        side={side}
        points={off.map(({ at, value }) => ({
          at: forDrawing(at),
          off: forDrawing(value),
          text: writeLength(value, tape),
        }))}
        label={words.drawn(side)}
      />
      <p class="note">{words.drawnLarger}</p>
    </>
  ) : null;
