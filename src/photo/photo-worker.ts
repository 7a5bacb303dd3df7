import {openDesk} from './desk.js';
import type {Order} from './desk.js';

/** The worker: a desk behind messages. What it is sent and what it sends back: desk.ts. */
const scope = globalThis as unknown as {
  postMessage(message: unknown, transfer?: Transferable[]): void;
  addEventListener(type: 'message', listener: (event: MessageEvent<{call: number; order: Order}>) => void): void;
};

const desk = openDesk(() => undefined);

scope.addEventListener('message', ({data: {call, order}}) => {
  void desk(order).then((reply) => {
    const preview = 'answer' in reply ? (reply.answer as {preview?: ImageBitmap} | undefined)?.preview : undefined;
    scope.postMessage({call, reply}, preview ? [preview] : []);
  });
});

scope.postMessage('ready');
