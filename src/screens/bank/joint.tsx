import { add, forDrawing, isNegative, zero } from '../../length/length';
import type { Tape } from '../../length/tape';
import { grooveStop } from '../../trade/boxes/bank-parts';
import type { Drawer } from '../../trade/boxes/drawers';
import { type Fingers, fingerFit, slotOff } from '../../trade/boxes/fingers';
import type { JointLayout } from '../../trade/boxes/joints/joint';
import type { Dowels } from '../../trade/fasteners/dowels';
import type { Bank } from '../../trade/fronts/bank';
import { usualBank } from '../../trade/fronts/usual-bank';
import { CornerDrawing } from '../../ui/corner-drawing';
import { FingerDrawing } from '../../ui/finger-drawing';
import { TailDrawing } from '../../ui/tail-drawing';
import * as words from './joint-words';
import { grooveText, tailsErrorText } from './words';

type Of<K extends JointLayout['kind']> = Extract<JointLayout, { readonly kind: K }>;
type LaidProps<K extends JointLayout['kind']> = {
  readonly drawer: Drawer;
  readonly joint: Of<K>;
  readonly tape: Tape;
};

const d = forDrawing;

type JointProps = { readonly bank: Bank; readonly drawer: Drawer; readonly tape: Tape };

/** The joint of a box drawn to scale, and what it is cut to. */
export function Joint({ bank, drawer, tape }: JointProps) {
  const about = drawer.own ? words.aboutBox(drawer.own, drawer.joint.kind === 'doweled') : '';
  return (
    <>
      <Laid {...{ bank, drawer, tape }} />
      {about !== '' && <p class="s">{about}</p>}
    </>
  );
}

function Laid({ bank, drawer, tape }: JointProps) {
  const { joint } = drawer;
  switch (joint.kind) {
    case 'tails':
      return <TailsLaid {...{ drawer, joint, tape }} />;
    case 'fingers':
      return <FingersLaid {...{ drawer, joint, tape }} bank={bank} />;
    case 'doweled':
      return <DoweledLaid {...{ drawer, joint, tape }} />;
    default:
      return <CornerLaid {...{ drawer, joint, tape }} />;
  }
}

function TailsLaid({ drawer: { plan, box }, joint }: LaidProps<'tails'>) {
  if (!joint.tails.ok) return <p class="wrongline">{tailsErrorText(joint.tails.error)}</p>;
  const { value } = joint.tails;
  const inside = value.groove?.inside ?? true;
  const where = inside
    ? words.groovePlace(value.groove?.tail)
    : grooveText(value, { up: plan.groove.up, wide: box.grooveWide });
  return (
    <>
      <TailDrawing
        height={d(plan.height)}
        long={d(box.reach)}
        tails={value.tails.map((t) => ({
          near: d(t.near),
          far: d(t.far),
          baseNear: d(t.baseNear),
          baseFar: d(t.baseFar),
        }))}
        groove={{ up: d(plan.groove.up), wide: d(box.grooveWide), clear: inside }}
        label={words.joint(value, where)}
      />
      <p class={inside ? 's' : 'wrongline'}>{words.tails(value, where)}</p>
    </>
  );
}

function FingersLaid({ bank, drawer, joint, tape }: LaidProps<'fingers'> & { readonly bank: Bank }) {
  const { fingers, groove } = joint;
  const { plan, box, trim } = drawer;
  const stop = grooveStop(drawer);
  const where = words.amongText(groove, stop, tape);
  return (
    <>
      <FingerDrawing
        height={d(plan.height)}
        long={d(plan.front)}
        slots={fingers.slots.map(({ near, far }) => ({ near: d(near), far: d(far) }))}
        groove={{ up: d(plan.groove.up), wide: d(box.grooveWide), stopped: stop !== undefined }}
        label={words.fingersLabel(fingers)}
      />
      <p class="s">{words.fingersText(fingers, trim)}</p>
      <p class="s">{where}</p>
      {plan.proud && <p class="s">{words.sanded(plan.proud)}</p>}
      <Fit bank={bank} fingers={fingers} />
    </>
  );
}

/** What the step of the sled makes of the fingers, once it was measured. */
function Fit({ bank, fingers }: { readonly bank: Bank; readonly fingers: Fingers }) {
  const { fingerStep: step } = bank;
  if (!step) return null;
  const at = { wide: fingers.wide, step, play: bank.fingerPlay ?? usualBank(bank).fingerPlay };
  const fit = fingerFit(at);
  const last = fingers.slots.length;
  return (
    <p class={isNegative(fit.loose) ? 'wrongline' : 's'}>
      {words.fitText(fit, at.play)}
      {words.driftText(last, slotOff(at, last))}
    </p>
  );
}

/** What a corner looks like from above, as it is cut. */
const fromAbove = ({ plan, own }: Drawer) => ({
  past: own ? d(own.left) : 0,
  front: d(plan.front),
  lap: d(plan.lap),
  side: d(plan.side),
  back: d(plan.back),
  dado: d(plan.backDado),
  behind: d(plan.behind),
  label: words.cornerLabel,
});

function CornerLaid({ drawer }: LaidProps<'corner'>) {
  return (
    <>
      <CornerDrawing {...fromAbove(drawer)} />
      <p class="s">
        {drawer.own
          ? words.ownRabbetText(drawer.box.reach, drawer.plan.side, drawer.own)
          : words.rabbetText(drawer.box.reach, drawer.plan.side)}
      </p>
    </>
  );
}

const drawn = ({ size, inFace, inEdge }: Dowels) => ({
  thick: d(size.thick),
  inFace: d(inFace),
  inEdge: d(inEdge),
});

function DoweledLaid({ drawer, joint: { front, back, over }, tape }: LaidProps<'doweled'>) {
  const own = grooveStop(drawer);
  const stop = own && add(own, drawer.own?.left ?? zero);
  return (
    <>
      <CornerDrawing {...fromAbove(drawer)} dowels={{ front: drawn(front), back: drawn(back), over }} />
      <p class="s">{words.doweledText('front', front, tape)}</p>
      <p class="s">{words.doweledText('back', back, tape)}</p>
      <p class="s">{words.doweledGroove(stop, tape)}</p>
    </>
  );
}
