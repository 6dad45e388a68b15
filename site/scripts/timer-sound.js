// Sound, vibration and notification. Browsers let a page sound only after a touch, so that the sound is got ready by the
// first one.
import { store } from "./state.js";

/** How timers call: with sound, without, or not at all. */
export const voice = {
  get: () => store.get("timer-voice") || "sound",
  set: (how) => store.set("timer-voice", how === "sound" ? "" : how),
};

let sound; // the AudioContext
let playing = []; // what can still be stopped

/** Gets the sound ready; call it in a touch. */
export function wake() {
  const Context = globalThis.AudioContext ?? globalThis.webkitAudioContext;
  if (!Context) return;
  try {
    sound ??= new Context();
    if (sound.state !== "running") sound.resume().catch(() => {});
  } catch {
    // No sound on this device; the screen still tells.
  }
}

/** Whether a call could be heard now. */
export const ready = () => voice.get() !== "sound" || sound?.state === "running";

/** The tone for a mark that comes near: two short low notes. */
export const approaching = () => call([[0, 620], [0.3, 620]], [120, 120, 120]);

/** The tone for now: high notes until somebody touches the page, for some seconds at most. */
export const ringing = () => call(Array.from({ length: 12 }, (_, i) => [i * 0.5, i % 2 ? 880 : 1175]), [400, 200, 400, 200, 400, 200, 400]);

function call(notes, pattern) {
  const how = voice.get();
  if (how !== "silent" && navigator.userActivation?.hasBeenActive !== false) navigator.vibrate?.(pattern); // browsers complain before a touch
  hush();
  if (how !== "sound" || !sound) return;
  const asked = performance.now();
  const play = () => {
    if (performance.now() - asked < 3000) playing = notes.map(([at, pitch]) => note(sound.currentTime + at, pitch));
  };
  if (sound.state === "running") play();
  else sound.resume().then(play, () => {}); // at once, or never if nobody touches the page
}

function note(at, pitch) {
  const tone = sound.createOscillator(), loudness = sound.createGain();
  tone.type = "triangle";
  tone.frequency.value = pitch;
  loudness.gain.setValueAtTime(0, at);
  loudness.gain.linearRampToValueAtTime(0.9, at + 0.02);
  loudness.gain.linearRampToValueAtTime(0, at + 0.22);
  tone.connect(loudness).connect(sound.destination);
  tone.start(at);
  tone.stop(at + 0.25);
  return tone;
}

/** Ends a call before its time. */
export function hush() {
  for (const tone of playing) {
    try {
      tone.stop();
    } catch {
      // It has ended by itself.
    }
  }
  playing = [];
}

/** Whether notifications can be asked for, and what was answered: "default", "granted" or "denied". */
export const notices = () => globalThis.Notification?.permission;
export const askNotices = () => Notification.requestPermission();

/** Shows a notification, where the person has asked for them. */
export async function notice(text) {
  if (notices() !== "granted" || !store.get("timer-notices")) return;
  const options = { tag: "timer", renotify: true, silent: voice.get() === "silent" };
  try {
    const worker = await navigator.serviceWorker?.getRegistration();
    if (worker?.active) await worker.showNotification(text, options);
    else new Notification(text, options);
  } catch {
    // The page itself tells.
  }
}
