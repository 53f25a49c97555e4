import { Button } from '../../ui/button';
import { adds } from './option-words';

/** What may be added to the case. */
export const Add = ({ label, onTap }: { readonly label: string; readonly onTap: () => void }) => (
  <Button look="quiet" label={adds(label)} onTap={onTap} />
);
