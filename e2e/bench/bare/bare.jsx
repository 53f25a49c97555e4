import { render } from 'preact';
import { useState } from 'preact/hooks';

/** The least a Preact page can be: what the app's sizes and times are set beside. */
function Counter() {
  const [count, setCount] = useState(0);
  return (
    <button type="button" class="count" onClick={() => setCount(count + 1)}>
      {count}
    </button>
  );
}

render(<Counter />, document.getElementById('app'));
