/**
 * Screens that are not the first thing seen. They come in a second file, fetched (from the phone's own copy) right
 * after the first screen stands, so that a page never depends on a file a newer version may have cleared away.
 */
export { BankScreen } from '../screens/bank/bank';
export { BoxesScreen } from '../screens/bank/boxes';
export { ContentsScreen } from '../screens/bank/contents';
export { FrontsScreen } from '../screens/bank/fronts';
export { OneScreen } from '../screens/bank/one';
export { OpeningScreen } from '../screens/bank/opening';
export { BuyScreen } from '../screens/buy/buy';
export { Calipers } from '../screens/calipers/calipers';
export { BuiltScreen } from '../screens/case/built';
export { CaseScreen } from '../screens/case/case';
export { BeforeScreen } from '../screens/cautions/before';
export { CutsScreen } from '../screens/cuts/cuts';
export { SetupScreen } from '../screens/cuts/setup';
export { DoubleScreen } from '../screens/double/double';
export { FigureScreen } from '../screens/figure/figure';
export { HandOverScreen } from '../screens/handover/handover';
export { TakeInScreen } from '../screens/handover/take-in';
export { CopyLine } from '../screens/job/copy-line';
export { ImportScreen } from '../screens/job/import';
export { JobDocks } from '../screens/job/job-docks';
export { JobsScreen } from '../screens/job/jobs';
export { NewVersion } from '../screens/job/new-version';
export { PhoneScreen } from '../screens/job/phone';
export { ShopScreen } from '../screens/job/shop';
export { ChangeScreen } from '../screens/marks/change';
export { Facts } from '../screens/marks/facts';
export { FitScreen } from '../screens/marks/fit';
export { TrayScreen } from '../screens/marks/tray';
export { PartScreen } from '../screens/parts/part';
export { PartsScreen } from '../screens/parts/parts';
export { HalfDone } from '../screens/shared/half-done';
export { LayoutScreen } from '../screens/sheets/layout';
export { PiecesScreen } from '../screens/sheets/pieces';
export { SheetsScreen } from '../screens/sheets/sheets';
export { ShimsScreen } from '../screens/stack/shims';
export { StackScreen } from '../screens/stack/stack';
export { StockScreen } from '../screens/stock/stock';
export { openCodeReader } from './code-reader';
export { copiesOf } from './copies';
export { takeIncoming } from './incoming';
export { goOffline, startUpdate } from './offline';
