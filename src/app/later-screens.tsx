import { assertNever } from '../length/result';
import { BankScreen } from '../screens/bank/bank';
import { BoxesScreen } from '../screens/bank/boxes';
import { ContentsScreen } from '../screens/bank/contents';
import { FrontsScreen } from '../screens/bank/fronts';
import { OneScreen } from '../screens/bank/one';
import { OpeningScreen } from '../screens/bank/opening';
import type { Bench } from '../screens/bench';
import { BuyScreen } from '../screens/buy/buy';
import { BuiltScreen } from '../screens/case/built';
import { CaseScreen } from '../screens/case/case';
import { BeforeScreen } from '../screens/cautions/before';
import { CutsScreen } from '../screens/cuts/cuts';
import { DoubleScreen } from '../screens/double/double';
import { FigureScreen } from '../screens/figure/figure';
import { HandOverScreen } from '../screens/handover/handover';
import { TakeInScreen } from '../screens/handover/take-in';
import { FinishScreen } from '../screens/install/finish';
import { LabelsScreen } from '../screens/install/labels';
import { LookBackScreen } from '../screens/install/look-back';
import { ScrewsScreen } from '../screens/install/screws';
import { ImportScreen } from '../screens/job/import';
import { JobsScreen } from '../screens/job/jobs';
import { PhoneScreen } from '../screens/job/phone';
import { ShopScreen } from '../screens/job/shop';
import { LevelScreen } from '../screens/level/level';
import { LiftScreen } from '../screens/loads/lift';
import { LoadsScreen } from '../screens/loads/loads';
import { SolidScreen } from '../screens/loads/solid';
import { ThingsScreen } from '../screens/loads/things';
import { GrooveScreen, MachineScreen } from '../screens/machine/machine';
import { BoardsScreen } from '../screens/marks/boards-screen';
import { ChangeScreen } from '../screens/marks/change';
import { FitScreen } from '../screens/marks/fit';
import { MarksScreen } from '../screens/marks/marks';
import { TrayScreen } from '../screens/marks/tray';
import { PaperScreen } from '../screens/paper/paper';
import { PrintScreen } from '../screens/paper/print';
import { StickScreen } from '../screens/paper/stick';
import { TickInScreen } from '../screens/paper/tick-in';
import { PartScreen } from '../screens/parts/part';
import { PartsScreen } from '../screens/parts/parts';
import { PicturesScreen } from '../screens/pictures/pictures';
import { RoomScreen } from '../screens/room/room';
import type { Route } from '../screens/routes';
import { RuleScreen } from '../screens/rule/rule';
import { ScribeScreen } from '../screens/scribe/scribe';
import { LayoutScreen } from '../screens/sheets/layout';
import { PiecesScreen } from '../screens/sheets/pieces';
import { SheetsScreen } from '../screens/sheets/sheets';
import { ShimsScreen } from '../screens/stack/shims';
import { StackScreen } from '../screens/stack/stack';
import { StockScreen } from '../screens/stock/stock';
import { TimersScreen } from '../screens/timers/timers';
import { openCodeReader } from './code-reader';

type FirstAt = 'job' | 'last';
type LaterRoute = Exclude<Route, { readonly at: FirstAt }>;

type ScreenProps = { readonly route: LaterRoute; readonly bench: Bench };

/** A screen that is not the first thing seen. */
export function LaterScreen({ route, bench }: ScreenProps) {
  switch (route.at) {
    case 'figure':
      return <FigureScreen bench={bench} />;
    case 'before':
      return <BeforeScreen bench={bench} caution={route.caution} from={route.from} />;
    case 'jobs':
      return <JobsScreen bench={bench} />;
    case 'rule':
      return <RuleScreen bench={bench} />;
    case 'phone':
      return <PhoneScreen bench={bench} />;
    case 'shop':
      return <ShopScreen bench={bench} />;
    case 'import':
      return <ImportScreen bench={bench} />;
    case 'handover':
      return <HandOverScreen bench={bench} />;
    case 'takein':
      return <TakeInScreen bench={bench} openReader={openCodeReader} />;
    case 'double':
      return <DoubleScreen bench={bench} />;
    case 'boards':
      return <BoardsScreen bench={bench} />;
    case 'marks':
    case 'stops':
      return <MarksScreen key={route.board} bench={bench} id={route.board} show={route.at} />;
    case 'change':
      return <ChangeScreen key={route.board} bench={bench} id={route.board} />;
    case 'saw':
      return <GrooveScreen bench={bench} board={route.board} setting={route.setting} />;
    case 'tray':
      return <TrayScreen key={route.board} bench={bench} id={route.board} />;
    case 'fit':
      return <FitScreen key={route.groove} bench={bench} id={route.board} groove={route.groove} />;
    default:
      return pieceScreen(route, bench);
  }
}

type PaperAt = 'paper' | 'stick' | 'print' | 'tickin';
type InstallAt = 'screws' | 'finish' | 'labels' | 'lookback' | 'timers' | 'pictures' | PaperAt;
type InstallRoute = Extract<Route, { readonly at: InstallAt }>;

type RoomAt = 'room' | 'level' | 'scribe';
type RoomRoute = Extract<Route, { readonly at: RoomAt }>;
type LoadAt = 'loads' | 'lift' | 'solid' | 'things';
type ThisCaseAt = 'case' | 'built' | 'fronts' | 'bank' | 'opening' | 'boxes' | 'contents' | 'one' | LoadAt;
type CaseAt = RoomAt | ThisCaseAt;
type CaseRoute = Extract<Route, { readonly at: CaseAt }>;

type StockAt = 'stock' | 'sheets' | 'layout' | 'pieces' | 'buy';
type CutsAt = 'cuts' | 'setup' | 'stack' | 'shims' | 'parts' | 'part';
type PieceRoute = CaseRoute | InstallRoute | Extract<Route, { readonly at: StockAt | CutsAt }>;

/** Stock, its layout, and the cuts of parts. */
function pieceScreen(route: PieceRoute, bench: Bench) {
  switch (route.at) {
    case 'stock':
      return <StockScreen key={route.id} bench={bench} id={route.id} of={route.of} />;
    case 'sheets':
      return <SheetsScreen bench={bench} />;
    case 'layout':
      return <LayoutScreen key={route.id} bench={bench} id={route.id} path={route.path} />;
    case 'pieces':
      return <PiecesScreen key={route.id} bench={bench} id={route.id} />;
    case 'buy':
      return <BuyScreen bench={bench} />;
    case 'cuts':
      return <CutsScreen bench={bench} />;
    case 'setup':
      return <MachineScreen key={route.id} bench={bench} id={route.id} />;
    case 'stack':
      return <StackScreen key={route.id} bench={bench} id={route.id} />;
    case 'shims':
      return <ShimsScreen bench={bench} />;
    case 'parts':
      return <PartsScreen bench={bench} />;
    case 'part':
      return <PartScreen key={route.id} bench={bench} id={route.id} />;
    default:
      return caseScreen(route, bench);
  }
}

/** A case and its drawers. */
function caseScreen(route: CaseRoute | InstallRoute, bench: Bench) {
  switch (route.at) {
    case 'case':
      return <CaseScreen key={route.id} bench={bench} id={route.id} />;
    case 'built':
      return <BuiltScreen key={route.id} bench={bench} id={route.id} />;
    case 'fronts':
      return <FrontsScreen key={route.id} bench={bench} id={route.id} />;
    case 'bank':
      return <BankScreen key={route.id} bench={bench} id={route.id} page={route.page} />;
    case 'opening':
      return <OpeningScreen key={route.id} bench={bench} id={route.id} />;
    case 'boxes':
      return <BoxesScreen key={route.id} bench={bench} id={route.id} />;
    case 'contents':
      return <ContentsScreen key={route.id} bench={bench} id={route.id} />;
    case 'one':
      return <OneScreen bench={bench} id={route.id} what={route.what} step={route.step} />;
    case 'loads':
    case 'lift':
    case 'solid':
    case 'things':
      return loadScreen(route, bench);
    default:
      return route.at === 'room' || route.at === 'level' || route.at === 'scribe'
        ? roomScreen(route, bench)
        : installScreen(route, bench);
  }
}

/** A case put up, and the job looked back at. */
function installScreen(route: InstallRoute, bench: Bench) {
  switch (route.at) {
    case 'screws':
      return <ScrewsScreen key={route.id} bench={bench} id={route.id} step={route.step} />;
    case 'finish':
      return <FinishScreen key={route.id} bench={bench} id={route.id} />;
    case 'labels':
      return <LabelsScreen bench={bench} />;
    case 'lookback':
      return <LookBackScreen bench={bench} />;
    case 'timers':
      return <TimersScreen bench={bench} />;
    case 'pictures':
      return <PicturesScreen key={route.of} bench={bench} of={route.of} />;
    default:
      return paperScreen(route, bench);
  }
}

/** What goes on paper, and comes back off it. */
function paperScreen(route: Extract<Route, { readonly at: PaperAt }>, bench: Bench) {
  switch (route.at) {
    case 'paper':
      return <PaperScreen bench={bench} />;
    case 'stick':
      return (
        <StickScreen key={`${route.id}~${route.which}`} bench={bench} id={route.id} which={route.which} />
      );
    case 'print':
      return <PrintScreen key={route.id} bench={bench} id={route.id} />;
    case 'tickin':
      return <TickInScreen bench={bench} />;
    default:
      return assertNever(route);
  }
}

/** The room, and how a case stands in it. */
function roomScreen(route: RoomRoute, bench: Bench) {
  switch (route.at) {
    case 'room':
      return <RoomScreen bench={bench} page={route.page} step={route.step} />;
    case 'level':
      return <LevelScreen key={route.id} bench={bench} id={route.id} foot={route.foot} />;
    case 'scribe':
      return <ScribeScreen key={route.id} bench={bench} id={route.id} step={route.step} />;
    default:
      return assertNever(route);
  }
}

/** What of a case is heavy, lifted, or moves with the year. */
function loadScreen(route: Extract<Route, { readonly at: LoadAt }>, bench: Bench) {
  if (route.at === 'things') return <ThingsScreen bench={bench} />;
  const { at, id } = route;
  if (at === 'lift') return <LiftScreen key={id} bench={bench} id={id} />;
  if (at === 'solid') return <SolidScreen key={id} bench={bench} id={id} />;
  return <LoadsScreen key={id} bench={bench} id={id} />;
}
