import type { BankPlan } from '../../plan/bank-plan';
import type { DrawersProblem } from '../../trade/boxes/drawers';
import { drawersProblemText, frontsProblemText } from './words';

/** The pages of what goes into a bank, in their order. Frozen: they stand in addresses. */
export const formPages = ['fronts', 'boxes', 'wood'] as const;

export type FormPage = (typeof formPages)[number];

/** The page an address means; the first when it names none. @example pageNamed('wood') // 'wood' */
export const pageNamed = (name: string | undefined): FormPage =>
  formPages.find((page) => page === name) ?? 'fronts';

/** What is asked for next or is wrong, and the page that has its blank. */
type Asked = { readonly page: FormPage; readonly text: string; readonly missing: boolean };

/** The page that has the blank a fault of the boxes comes from. */
function pageOf(problem: DrawersProblem): FormPage {
  switch (problem.code) {
    case 'missing-depth':
    case 'no-box':
    case 'own-narrow':
    case 'own-low':
    case 'inside-gone':
    case 'inside-depth-gone':
    case 'hung-not-positive':
    case 'hung-negative':
    case 'strip-meets-bottom':
    case 'strip-off':
    case 'stop-short':
    case 'stop-shut':
      return 'boxes';
    case 'not-positive':
      return problem.field === 'depth' || problem.field === 'clearance' ? 'boxes' : 'wood';
    default:
      return 'wood';
  }
}

/**
 * What a bank asks for: one thing at a time while something is missing, else everything that is wrong.
 *
 * @param page only what has its blank there
 */
export function askedOf({ fronts, drawers }: BankPlan, page?: FormPage): readonly Asked[] {
  const ofFronts = fronts.ok
    ? []
    : fronts.error.map(
        (problem): Asked => ({
          page: 'fronts',
          text: frontsProblemText(problem),
          missing: problem.code === 'missing',
        }),
      );
  const ofBoxes =
    !drawers || drawers.ok
      ? []
      : drawers.error.map(
          (problem): Asked => ({
            page: pageOf(problem),
            text: drawersProblemText(problem),
            missing: problem.code === 'missing-stock' || problem.code === 'missing-depth',
          }),
        );
  const own = [...ofFronts, ...ofBoxes].filter((x) => page === undefined || x.page === page);
  const next = own.find((x) => x.missing);
  return next ? [next] : own;
}
