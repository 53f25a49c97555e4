import { useState } from 'preact/hooks';
import { Button } from '../../ui/button';
import type { ThisPhone } from '../bench';
import * as words from './phone-words';
import './job.css';

/** Putting the app on the home screen: where that starts it empty, the copy goes out first. */
export function HomeScreen({ phone: { home, servedHere } }: { readonly phone: ThisPhone }) {
  const [asked, setAsked] = useState(false);
  const at = home.at();
  if (at === 'home-screen') return null;
  return (
    <>
      <h2 class="sec">{words.homeScreen}</h2>
      {at === 'iphone-browser' ? <OnIphone /> : <p>{words.opensLikeAnApp(servedHere.value)}</p>}
      {home.canPut() && !asked && (
        <Button
          label={words.putThere}
          onTap={() => {
            home.put();
            setAsked(true);
          }}
        />
      )}
    </>
  );
}

const OnIphone = () => (
  <>
    <p>{words.startsEmpty}</p>
    <ol class="steps">
      {words.iphoneSteps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
  </>
);
