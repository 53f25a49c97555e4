import { useState } from 'preact/hooks';
import { editCase } from '../../job/edits';
import { half } from '../../length/length';
import { endAt, type Flat, jointAt } from '../../trade/carcass/meetings';
import { Chip } from '../../ui/button';
import { Acts, Sentence } from '../shared/sentence';
import { blanks, type CasePart, Said } from './blanks';
import * as join from './join-words';
import * as joints from './joint-asks';
import * as words from './sentence-words';

/** How the parts of a case are joined, and how deep. */
export function JointSentence(part: CasePart) {
  const { c, act } = part;
  const { blank, length, thick, usual } = blanks(part);
  const side = thick('side');
  const [rights, more] = useRights(part);
  return (
    <Sentence label={words.joints}>
      {join.meets(c, {
        bottom: blank(joints.caseJoint(c, 'bottom')),
        bottomPast: length('bottomPast', usual.overhang),
        top: blank(joints.caseJoint(c, 'top')),
        topPast: length('topPast', usual.overhang),
        sidePast: length('sidePast', usual.overhang),
        partition: blank(joints.caseJoint(c, 'partition')),
        shelf: blank(joints.caseJoint(c, 'shelf')),
        ...rights,
      })}
      {join.deep(c, {
        dado: length('dado', usual.dado),
        partition: length('partitionDado', c.dado ?? usual.dado),
        fit: length('fit', usual.fit),
        bottom: length('bottomRabbet', side && half(side)),
        top: length('topRabbet', side && half(side)),
      })}
      <Tongues {...part} />
      <Acts>
        <Chip
          label={words.topChip(c.hasTop)}
          onTap={() => act(words.topChanged, editCase(c.id, { hasTop: !c.hasTop }))}
        />
        {more && <Chip label={join.rightOtherwise} onTap={more} />}
      </Acts>
      <Said {...part} at="joints" />
    </Sentence>
  );
}

/** Right ends of bottom and top: asked for where one is joined otherwise, or once that is wanted. */
function useRights(part: CasePart) {
  const [wanted, setWanted] = useState(false);
  const { c } = part;
  const { blank } = blanks(part);
  const at = (flat: Flat) => {
    const ask = joints.caseRight(c, flat);
    const differs = jointAt(c, flat) !== jointAt(c, endAt(flat, 'right'));
    return ask && (wanted || differs) ? blank(ask) : undefined;
  };
  const rights = { bottomRight: at('bottom'), topRight: at('top') };
  const open = [rights.bottomRight, c.hasTop && rights.topRight];
  const could = joints.caseRight(c, 'bottom') || (c.hasTop && joints.caseRight(c, 'top'));
  return [rights, could && !open.some(Boolean) ? () => setWanted(true) : undefined] as const;
}

function Tongues(part: CasePart) {
  const { c } = part;
  const { blank, length, usual } = blanks(part);
  return (
    <>
      {join.tongues(c, {
        thick: length('tongue', usual.tongue),
        room: length('tongueRoom', usual.tongueRoom),
        bottom: blank(joints.caseHugs(c, 'bottom')),
        partition: blank(joints.caseHugs(c, 'partition')),
        shelf: blank(joints.caseHugs(c, 'shelf')),
      })}
    </>
  );
}
