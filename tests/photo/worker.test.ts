import {assert, expect} from '@open-wc/testing';
import {openDesk} from '../../src/photo/desk.js';
import type {Order} from '../../src/photo/desk.js';
import {openPhoto} from '../../src/photo/open.js';
import type {Photo} from '../../src/photo/open.js';
import {isPhotoProblem} from '../../src/photo/problem.js';
import {drawn, fill, png} from './pictures.js';

async function opened(file: Blob, options = {}): Promise<Photo> {
  const result = await openPhoto(file, options);
  if (isPhotoProblem(result)) assert.fail(result.problem);
  return result;
}

const picture = (code: number) => drawn(40, 30, (pen) => fill(pen, [code, code, code], 0, 0, 40, 30));

/** Runs `job` with another Worker, and puts the real one back. */
async function withWorker(stand: typeof Worker, job: () => Promise<void>): Promise<void> {
  const real = globalThis.Worker;
  globalThis.Worker = stand;
  try {
    await job();
  } finally {
    globalThis.Worker = real;
  }
}

describe('the worker of open photos', () => {
  it('is one for all of them, and goes with the last', async () => {
    let [made, ended] = [0, 0];
    const Watched = class extends Worker {
      constructor(...given: ConstructorParameters<typeof Worker>) {
        super(...given);
        made++;
      }
      override terminate(): void {
        ended++;
        super.terminate();
      }
    };
    await withWorker(Watched, async () => {
      const [first, second] = await Promise.all([opened(await picture(50)), opened(await picture(60))]);
      first.close();
      const third = await opened(await picture(70));
      expect([made, ended]).to.deep.equal([1, 0]);
      expect((await second.tally()).red[60]).to.equal(1200);
      expect((await third.tally()).red[70]).to.equal(1200);
      second.close();
      third.close();
      await new Promise((resolve) => setTimeout(resolve));
      expect([made, ended]).to.deep.equal([1, 1]);
      // And comes back for the next.
      const fourth = await opened(await picture(80));
      expect(made).to.equal(2);
      fourth.close();
    });
  });

  it('goes when the only file was no good', async () => {
    let ended = 0;
    const Watched = class extends Worker {
      override terminate(): void {
        ended++;
        super.terminate();
      }
    };
    await withWorker(Watched, async () => {
      await openPhoto(new File(['no picture'], 'a.jpg'));
      await new Promise((resolve) => setTimeout(resolve));
      expect(ended).to.equal(1);
    });
  });

  it('is done without where the page may not have one', async () => {
    const Forbidden = class extends EventTarget {
      constructor() {
        super();
        throw new DOMException('not from here', 'SecurityError');
      }
    } as unknown as typeof Worker;
    await withWorker(Forbidden, async () => {
      const photo = await opened(await picture(90));
      expect(photo.where).to.equal('page');
      expect((await photo.tally({x: 1, y: 1, width: 3, height: 3})).red[90]).to.equal(9);
      photo.close();
    });
  });

  it('is done without where its script is missing', async () => {
    const Missing = class extends Worker {
      constructor() {
        super('data:text/javascript,throw new Error("blocked")', {type: 'module'});
      }
    };
    await withWorker(Missing, async () => {
      const photo = await opened(await picture(91));
      expect(photo.where).to.equal('page');
      expect((await photo.tally()).red[91]).to.equal(1200);
      photo.close();
    });
  });
});

describe('the desk of open photos', () => {
  it('has no more on it than was not closed: one photo after ten replacements', async () => {
    const desk = openDesk(() => undefined);
    const asked = {x: 0, y: 0, width: 40, height: 30};
    const ask = (photo: number) => desk({do: 'ask', photo, question: 'tally', asked, other: undefined});
    await desk({do: 'open', photo: 0, file: await picture(10)});
    for (let photo = 1; photo <= 10; photo++) {
      await desk({do: 'open', photo, file: await picture(10 + photo)});
      await desk({do: 'close', photo: photo - 1});
    }
    const replies = await Promise.all(Array.from({length: 11}, (_, photo) => ask(photo)));
    expect(replies.map((reply) => 'answer' in reply)).to.deep.equal([...Array<boolean>(10).fill(false), true]);
    expect(replies.slice(0, 10).every((reply) => 'refused' in reply && reply.refused[0] === 'photo')).to.equal(true);
  });

  it('is told of every photo that an element replaces', async () => {
    const open = new Set<number>();
    const Watched = class extends Worker {
      override postMessage(message: {order: Order}): void {
        const {order} = message;
        if (order.do === 'open') open.add(order.photo);
        if (order.do === 'close') open.delete(order.photo);
        super.postMessage(message);
      }
    };
    await withWorker(Watched, async () => {
      const {TonalChartReader} = await import('../../src/elements/tonal-chart-reader/class.js');
      if (!customElements.get('tonal-chart-reader')) customElements.define('tonal-chart-reader', TonalChartReader);
      const el = document.createElement('tonal-chart-reader') as InstanceType<typeof TonalChartReader>;
      document.body.append(el);
      for (let code = 0; code <= 10; code++) expect(await el.open(await picture(100 + code))).to.equal(true);
      expect(open.size).to.equal(1);
      el.remove();
      await new Promise((resolve) => setTimeout(resolve, 50));
      expect(open.size).to.equal(0);
    });
  });
});

describe('a photo of 24 megapixels', () => {
  const large = () => png({width: 6000, height: 4000, bits: 8, type: 0, rows: new Uint8Array(6001 * 4000)});

  it('lets the page have its turn again and again while it is opened without a worker', async () => {
    const file = await large();
    let turns = 0;
    let watching = true;
    const {port1, port2} = new MessageChannel();
    port1.onmessage = () => {
      turns++;
      if (watching) port2.postMessage(0);
    };
    port2.postMessage(0);
    const photo = await opened(file, {inPage: true});
    watching = false;
    port1.close();
    expect((await photo.tally()).pixels).to.equal(24_000_000);
    photo.close();
    // It is read out in bands and counted in rows of tiles, more than a hundred pieces of work in all.
    expect(turns).to.be.greaterThan(10);
  });
});
