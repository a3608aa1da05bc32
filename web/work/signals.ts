import type { Verdict } from '@clampwright/core/verdict';

/** Ways to repeat a verdict for eyes that look at the wrench. */
export const SIGNALS = ['sound', 'vibration', 'speech'] as const;
export type Signal = (typeof SIGNALS)[number];
export type Signals = Readonly<Record<Signal, boolean>>;

const KEY = 'clampwright.signals';

/** Chosen at this device; sound alone until somebody chooses. */
export function chosenSignals(): Signals {
  const kept = localStorage.getItem(KEY)?.split(' ') ?? ['sound'];
  return { sound: kept.includes('sound'), vibration: kept.includes('vibration'), speech: kept.includes('speech') };
}

export function chooseSignals(signals: Signals): void {
  localStorage.setItem(KEY, SIGNALS.filter((signal) => signals[signal]).join(' '));
}

interface Tone {
  readonly hz: number;
  readonly atS: number;
  readonly forS: number;
}

/** Told apart by number, direction and length, not by pitch alone: two up, one long low, three short high, one that sways. */
const TONES = {
  within: [
    { hz: 587, atS: 0, forS: 0.11 },
    { hz: 880, atS: 0.13, forS: 0.2 },
  ],
  under: [{ hz: 196, atS: 0, forS: 0.65 }],
  over: [
    { hz: 1047, atS: 0, forS: 0.09 },
    { hz: 1047, atS: 0.15, forS: 0.09 },
    { hz: 1047, atS: 0.3, forS: 0.09 },
  ],
  doubtful: [
    { hz: 466, atS: 0, forS: 0.16 },
    { hz: 392, atS: 0.18, forS: 0.16 },
    { hz: 466, atS: 0.36, forS: 0.16 },
    { hz: 392, atS: 0.54, forS: 0.16 },
  ],
} as const satisfies Record<Verdict, readonly Tone[]>;

/** Milliseconds on, off, on … */
const BUZZES = {
  within: [80],
  under: [500],
  over: [90, 60, 90, 60, 90],
  doubtful: [200, 120, 200],
} as const satisfies Record<Verdict, readonly number[]>;

let room: AudioContext | undefined;

/** Sound is let through by the browser only after a touch or key; called at one, it makes the room ready. */
export function openSound(): void {
  room ??= new AudioContext();
  void room.resume();
}

/** Repeats a verdict in the chosen ways. */
export function signal(verdict: Verdict, signals: Signals, spoken: string, language: string): void {
  if (signals.sound && room) for (const tone of TONES[verdict]) play(room, tone);
  if (signals.vibration && 'vibrate' in navigator) navigator.vibrate([...BUZZES[verdict]]);
  if (signals.speech && 'speechSynthesis' in globalThis) {
    const words = new SpeechSynthesisUtterance(spoken);
    words.lang = language;
    speechSynthesis.cancel();
    speechSynthesis.speak(words);
  }
}

const LOUDNESS = 0.25;
const FADE_S = 0.015;

function play(context: AudioContext, { hz, atS, forS }: Tone): void {
  const start = context.currentTime + atS;
  const gain = context.createGain();
  gain.gain.setValueAtTime(0, start);
  gain.gain.linearRampToValueAtTime(LOUDNESS, start + FADE_S);
  gain.gain.setValueAtTime(LOUDNESS, start + forS - FADE_S);
  gain.gain.linearRampToValueAtTime(0, start + forS);
  const voice = context.createOscillator();
  voice.type = 'triangle';
  voice.frequency.value = hz;
  voice.connect(gain).connect(context.destination);
  voice.start(start);
  voice.stop(start + forS);
}
