import { useState } from 'preact/hooks';
import type { Bench } from '../bench';

/** Putting the app on the home screen: where that starts it empty, the copy goes out first. */
export function HomeScreen({ bench }: { readonly bench: Bench }) {
  const [asked, setAsked] = useState(false);
  const { home } = bench.phone;
  const at = home.at();
  if (at === 'home-screen') return null;
  return (
    <>
      <h2 class="sec">On the home screen</h2>
      {at === 'iphone-browser' ? (
        <OnIphone />
      ) : (
        <p>It opens like any app{bench.phone.servedHere.value ? ', and works with no signal' : ''}.</p>
      )}
      {home.canPut() && !asked && (
        <button
          type="button"
          class="btn"
          onClick={() => {
            home.put();
            setAsked(true);
          }}
        >
          Put it on the home screen
        </button>
      )}
    </>
  );
}

const OnIphone = () => (
  <>
    <p>On an iPhone the app on the home screen starts empty: what is kept here stays here.</p>
    <ol class="steps">
      <li>Copy everything out, above.</li>
      <li>Share, then Add to Home Screen.</li>
      <li>Open it there and bring the copy in.</li>
    </ol>
  </>
);
