import {EMPTY_STATE, type ShotState} from '../../core/shot/state.js';

/** What a listener of a bench is told: who spoke, so that nobody answers itself. */
export type BenchListener = (origin: object | undefined) => void;

/** Things on a bench that are no part of the record: the open photo and what was measured on it. */
export type BenchThings = Readonly<Record<string, unknown>>;

/** The shot that linked elements share, and who wants to hear of it. */
export class Bench {
  #state = EMPTY_STATE;
  #things: BenchThings = {};
  readonly #listeners = new Set<BenchListener>();

  get state(): ShotState { return this.#state; }

  get things(): BenchThings { return this.#things; }

  /** Takes the next state and tells everybody. Nothing happens when it is the state that was there. */
  change(next: ShotState, origin?: object): void {
    if (next === this.#state) return;
    this.#state = next;
    this.#tell(origin);
  }

  /** Puts things beside the shot: `{photo}`. `undefined` takes one away. */
  put(things: BenchThings, origin?: object): void {
    this.#things = {...this.#things, ...things};
    this.#tell(origin);
  }

  /** @returns a function that ends it */
  listen(listener: BenchListener): () => void {
    this.#listeners.add(listener);
    return () => { this.#listeners.delete(listener); };
  }

  /** Whether nobody listens any more. */
  get deserted(): boolean { return this.#listeners.size === 0; }

  #tell(origin: object | undefined): void {
    for (const listener of [...this.#listeners]) listener(origin);
  }
}

/**
 * Benches of this page by name. They stand on the global object under a registered symbol, so that two copies of
 * the library on one page still share a bench. The number is raised when a bench stops being compatible.
 */
const BENCHES = Symbol.for('lampblack.benches.1');

function benches(): Map<string, Bench> {
  const holder = globalThis as {[BENCHES]?: Map<string, Bench>};
  return holder[BENCHES] ??= new Map<string, Bench>();
}

/** Whether elements that a server renders just now are on one page. */
export function onOnePage(): boolean {
  return (globalThis as {[BENCHES]?: Map<string, Bench>})[BENCHES] !== undefined;
}

/** Benches for what `work` renders, and for nothing else: a server renders pages of many readers. */
export function withBenches<T>(work: () => T): T {
  const holder = globalThis as {[BENCHES]?: Map<string, Bench> | undefined};
  const before = holder[BENCHES];
  holder[BENCHES] = new Map();
  try {
    return work();
  } finally {
    if (before) holder[BENCHES] = before;
    else delete holder[BENCHES];
  }
}

/** The bench of that name, laid when it is first asked for. */
export function benchNamed(name: string): Bench {
  const all = benches();
  let bench = all.get(name);
  if (!bench) all.set(name, bench = new Bench());
  return bench;
}

/**
 * Clears a bench away once nobody listens to it. Waits a task, so that an element that is only moved finds its shot
 * as it left it.
 */
export function clearDesertedBench(name: string): void {
  setTimeout(() => {
    const bench = benches().get(name);
    if (!bench?.deserted) return;
    benches().delete(name);
    for (const thing of Object.values(bench.things)) {
      if (thing && typeof (thing as {close?: unknown}).close === 'function') (thing as {close: () => void}).close();
    }
  });
}
