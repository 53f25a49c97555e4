import { useEffect, useState } from 'preact/hooks';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { sayIt } from './aloud-words';
import './read-aloud.css';

type ReadAloudProps = {
  readonly settings: Bench['settings'];
  /** What is said of the step in hand, whole. */
  readonly says: string;
};

/**
 * Speaks the figure in hand with the phone's own voice, on a tap, or at every step where that was chosen. Not there
 * where the phone has no voice of its own: one that is fetched speaks only with a signal.
 */
export function ReadAloud({ settings, says }: ReadAloudProps) {
  const voice = useVoice();
  const each = settings.value.aloud === 'each';
  useEffect(() => {
    if (voice && each) speak(says, voice);
  }, [voice, each, says]);
  useEffect(() => () => globalThis.speechSynthesis?.cancel(), []);
  if (!voice) return null;
  return (
    <button type="button" class="sayit" aria-label={sayIt} onClick={() => speak(says, voice)}>
      <Icon name="voice" />
    </button>
  );
}

/** The phone's own voice for English; nothing while it has none. */
function useVoice(): SpeechSynthesisVoice | undefined {
  const [voice, setVoice] = useState<SpeechSynthesisVoice>();
  useEffect(() => {
    const speech = globalThis.speechSynthesis;
    if (!speech) return undefined;
    const look = () => {
      const own = speech.getVoices().filter((one) => one.localService && /^en\b/i.test(one.lang));
      setVoice(own.find((one) => one.default) ?? own[0]);
    };
    look();
    speech.addEventListener('voiceschanged', look);
    return () => speech.removeEventListener('voiceschanged', look);
  }, []);
  return voice;
}

/** What is being said gives way: the last tap is what counts. */
function speak(says: string, voice: SpeechSynthesisVoice): void {
  speechSynthesis.cancel();
  const said = new SpeechSynthesisUtterance(says);
  said.voice = voice;
  said.lang = voice.lang;
  speechSynthesis.speak(said);
}
