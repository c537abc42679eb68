/** Reads aloud with the voice of the browser. */

/** Whether this browser has a voice. */
export function hasVoice(): boolean {
  return "speechSynthesis" in window;
}

/** Reads a sentence; what is being read is broken off, for the weaver has gone on. */
export function readAloud(sentence: string): void {
  if (!hasVoice()) return;
  speechSynthesis.cancel();
  const said = new SpeechSynthesisUtterance(sentence);
  said.lang = "en";
  speechSynthesis.speak(said);
}
