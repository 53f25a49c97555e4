import type { Job } from '../../job/job';
import { sheetsOf } from '../../plan/measured-sheets';
import { clearancesIn } from '../../trade/grooves/fit';
import { unitInHand } from '../../ui/unit-in-hand';
import { useLength, useLengths, useStays } from '../shared/stays';
import * as words from './fit-words';

/** How the parts go into their grooves. */
export type Kind = (typeof words.kinds)[number]['value'];

/** Stands among the ids of sheets for readings given on this screen. */
export const here = '-';

/** What was given on the screen for a run of grooves: the sheet or readings, the kind of fit, its clearance. */
export function useGiven(groove: string, job: Job | undefined) {
  const sheets = sheetsOf(job);
  const ids = [here, ...sheets.map((s) => s.id)];
  const [sheet, setSheet] = useStays(`fit sheet ${groove}`, ids, sheets[0]?.id ?? here);
  const [own, setOwn] = useLengths(`fit readings ${groove}`);
  const kinds = words.kinds.map(({ value }) => value);
  const [kind, setKind] = useStays<Kind>(`fit kind ${groove}`, kinds, 'glued');
  const [other, setOther] = useLength(`fit clearance ${groove}`);
  const readings = job?.stock.find((s) => s.id === sheet)?.readings ?? own;
  const clearance = other ?? clearancesIn(unitInHand())[kind];
  return { sheets, sheet, setSheet, readings, own, setOwn, kind, setKind, clearance, setOther };
}

export type Given = ReturnType<typeof useGiven>;
