import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Length } from '../../length/length';
import { unitsOf } from '../../length/tape';
import { writeMillimetres } from '../../length/write';
import { type Calibration, pointsOf, screenDoubt } from '../../trade/paper/screen-rule';
import { Bar } from '../../ui/bar';
import { Chip } from '../../ui/button';
import { KeySheet } from '../../ui/key-sheet';
import { ScreenRule } from '../../ui/screen-rule';
import { tapeInHand } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { leave } from '../shared/leave';
import { Calibrate } from './calibrate';
import { lookNow, readRule, writeRule } from './kept';
import { drawnPoints, reachOf, ticksFor } from './rule.model';
import * as words from './words';
import './rule.css';

type RuleBench = Pick<Bench, 'settings' | 'keep'> & Parameters<typeof leave>[0];

/** The edge of this phone as a short rule, once its screen was calibrated against a card. */
export function RuleScreen({ bench }: { readonly bench: RuleBench }) {
  const [again, setAgain] = useState(false);
  const { room, page } = useRoom();
  const look = lookNow();
  const found = readRule(bench.settings.value.rule, look);
  const at = again || found === 'zoomed' ? undefined : found;
  return (
    <>
      <Bar title={words.title} leave={{ label: words.back, onTap: () => leave(bench, { at: 'phone' }) }} />
      <main class="page" ref={page}>
        {found === 'zoomed' && <p class="pad-x wrongline">{words.zoomed}</p>}
        {at ? (
          <Ruled at={at} room={room} onAgain={() => setAgain(true)} />
        ) : (
          room > 0 && (
            <Calibrate
              room={room}
              onDone={(points) => {
                setAgain(false);
                void bench.keep({ rule: writeRule(points, look) });
              }}
            />
          )
        )}
      </main>
    </>
  );
}

/** Points of the screen from the top of the page down. */
function useRoom() {
  const page = useRef<HTMLElement>(null);
  const [room, setRoom] = useState(0);
  useLayoutEffect(() => {
    const measure = () => setRoom(innerHeight - (page.current?.getBoundingClientRect().top ?? 0));
    measure();
    addEventListener('resize', measure);
    return () => removeEventListener('resize', measure);
  }, []);
  return { room, page };
}

type RuledProps = { readonly at: Calibration; readonly room: number; readonly onAgain: () => void };

function Ruled({ at, room, onAgain }: RuledProps) {
  const [open, setOpen] = useState(false);
  const [thick, setThick] = useState<Length>();
  const tape = tapeInHand.value;
  const units = unitsOf(tape);
  const reach = reachOf(room, at, units);
  const off = (length: Length) => `± ${writeMillimetres(screenDoubt(pointsOf(length, at), at))}`;
  return (
    <div class="rulepage">
      <ScreenRule
        high={room}
        ticks={ticksFor(room, at, units)}
        thick={thick && drawnPoints(thick, at)}
        label={words.drawn}
      />
      <div class="rulesays">
        <p>{words.doubt(reach, off(reach))}</p>
        {thick && <p>{words.doubtOf(thick, off(thick))}</p>}
        <div class="chips">
          <Chip label={words.thick} onTap={() => setOpen(true)} />
          <Chip label={words.again} onTap={onAgain} />
        </div>
        <p class="note">{words.not}</p>
      </div>
      {open && (
        <KeySheet
          title={words.thick}
          tape={tape}
          fill="length"
          now={thick}
          onLength={(value) => setThick(value)}
          onClose={() => setOpen(false)}
        />
      )}
    </div>
  );
}
