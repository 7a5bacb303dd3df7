import type {Desk, Order, Reply} from './desk.js';
import {trusted} from './trusted.js';

/** A way to a desk, and its end. */
export interface Line {
  readonly where: 'worker' | 'page';
  readonly send: Desk;
  /** Lets go of the worker and everything in it. */
  readonly end: () => void;
}

/**
 * A line to a desk in a worker of its own, or `undefined` when the page may not have one: forbidden by its content
 * policy, the script on another origin, blocked or missing.
 */
export async function workerLine(): Promise<Line | undefined> {
  for (const start of [startWorker, startFromElsewhere]) {
    const worker = await ready(start);
    if (worker) return lineTo(worker);
  }
  return undefined;
}

// Bundlers recognise the worker by this very expression. Our own build of the script-tag files has its address trusted.
const startWorker = () => new Worker(new URL('./photo-worker.js', import.meta.url), {type: 'module'});

/** Workers have to come from the page's own origin; one line of its own may import the rest from elsewhere. */
function startFromElsewhere(): Worker {
  const script = `import ${JSON.stringify(new URL('./photo-worker.js', import.meta.url).href)};`;
  const url = URL.createObjectURL(new Blob([script], {type: 'text/javascript'}));
  try {
    return new Worker(trusted(url), {type: 'module'});
  } finally {
    // The worker has fetched it by the time it says that it is ready, or never will.
    setTimeout(() => URL.revokeObjectURL(url), 10_000);
  }
}

/** The worker once it says that it is ready; `undefined` when it fails first. */
function ready(start: () => Worker): Promise<Worker | undefined> {
  return new Promise((resolve) => {
    try {
      const worker = start();
      worker.addEventListener('message', () => resolve(worker), {once: true});
      worker.addEventListener('error', (event) => {
        event.preventDefault();
        worker.terminate();
        resolve(undefined);
      }, {once: true});
    } catch {
      resolve(undefined);
    }
  });
}

function lineTo(worker: Worker): Line {
  const waiting = new Map<number, (reply: Reply) => void>();
  let calls = 0;
  const giveUp = (fault: string) => {
    for (const settle of waiting.values()) settle({fault});
    waiting.clear();
  };
  worker.addEventListener('message', ({data}: MessageEvent<{call: number; reply: Reply}>) => {
    waiting.get(data.call)?.(data.reply);
    waiting.delete(data.call);
  });
  worker.addEventListener('messageerror', () => giveUp('an answer could not be read'));
  worker.addEventListener('error', () => giveUp('the worker stopped'));
  return {
    where: 'worker',
    send: (order: Order) => new Promise((resolve) => {
      waiting.set(++calls, resolve);
      worker.postMessage({call: calls, order});
    }),
    end: () => {
      worker.terminate();
      giveUp('the photo was closed');
    },
  };
}

/** Longest the page's thread is held at a time, ms: with what the browser adds, well within a frame. */
const SLICE_MS = 4;

/** A line to a desk in the page itself, which gives way every few milliseconds. Loaded only where it is needed. */
export async function pageLine(): Promise<Line> {
  const {openDesk} = await import('./desk.js');
  let since = performance.now();
  const breathe = () => {
    if (performance.now() - since < SLICE_MS) return undefined;
    return new Promise<void>((resolve) => setTimeout(() => {
      since = performance.now();
      resolve();
    }));
  };
  return {where: 'page', send: openDesk(breathe), end: () => undefined};
}
