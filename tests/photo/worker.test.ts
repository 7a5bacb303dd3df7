import {assert, expect} from '@open-wc/testing';
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
