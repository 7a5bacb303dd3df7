import {expect, waitUntil} from '@open-wc/testing';
import {openPhoto} from '../../src/photo/open.js';
import {isPhotoProblem} from '../../src/photo/problem.js';
import {bytesOf, drawn, shot} from '../photo/pictures.js';
import {oddFile} from '../photo/odd-files.js';
import {isChromium, stand, text} from './cases.js';

/** Numbers that look like chance and are the same every time. Source: Marsaglia 2003, Xorshift RNGs, J. Stat. Softw. 8(14), 32 bits. */
function chance(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}

/** Ways to break a file: its end cut off, bits turned over here and there, a piece lost, doubled, or overwritten. */
const BREAKS: Readonly<Record<string, (whole: Uint8Array, upTo: (below: number) => number) => Uint8Array>> = {
  'cut short': (whole, upTo) => whole.slice(0, 1 + upTo(whole.length - 1)),
  'one bit turned in its head': (whole, upTo) => turned(whole, upTo, 1, Math.min(whole.length, 700)),
  'a few bits turned': (whole, upTo) => turned(whole, upTo, 1 + upTo(8), whole.length),
  'many bits turned': (whole, upTo) => turned(whole, upTo, 40 + upTo(200), whole.length),
  'a piece lost': (whole, upTo) => {
    const at = upTo(whole.length);
    return joined(whole.slice(0, at), whole.slice(at + 1 + upTo(400)));
  },
  'a piece doubled': (whole, upTo) => {
    const at = upTo(whole.length);
    return joined(whole.slice(0, at + 200), whole.slice(at));
  },
  'a piece overwritten': (whole, upTo) => {
    const copy = whole.slice();
    const at = upTo(whole.length);
    return copy.fill([0, 255, 0x41][upTo(3)] ?? 0, at, at + 1 + upTo(300));
  },
};

function turned(whole: Uint8Array, upTo: (below: number) => number, bits: number, within: number): Uint8Array {
  const copy = whole.slice();
  for (let bit = 0; bit < bits; bit++) {
    const at = upTo(within);
    copy[at] = (copy[at] ?? 0) ^ (1 << upTo(8));
  }
  return copy;
}

function joined(one: Uint8Array, other: Uint8Array): Uint8Array {
  const all = new Uint8Array(one.length + other.length);
  all.set(one);
  all.set(other, one.length);
  return all;
}

/** Small pictures of three kinds, with metadata in one of them. */
async function sources(): Promise<Readonly<Record<string, Uint8Array>>> {
  const patterned = (type: string) => drawn(96, 64, (pen) => {
    for (let x = 0; x < 96; x += 8) for (let y = 0; y < 64; y += 8) {
      pen.fillStyle = `rgb(${x * 2} ${y * 3} ${(x * y) % 256})`;
      pen.fillRect(x, y, 8, 8);
    }
  }, {type});
  const withMetadata = await bytesOf(await shot('aperture-f8.jpg'));
  return {
    jpeg: await bytesOf(await patterned('image/jpeg')), png: await bytesOf(await patterned('image/png')),
    // A canvas of WebKit and Firefox writes no WebP of its own in every build: one that was made before.
    webp: await bytesOf(oddFile('webp')), 'jpeg with metadata': withMetadata,
  };
}

/** Files of one kind and break. Two hundred and more in Chromium, where a decoder that hangs would show as well as anywhere; a sample elsewhere. */
const EACH = isChromium ? 12 : 3;

async function* broken(each: number): AsyncGenerator<{name: string; file: File}> {
  let seed = 20_240;
  for (const [kind, whole] of Object.entries(await sources())) {
    // The shot of the guild is large: fewer of it.
    const count = kind === 'jpeg with metadata' ? Math.ceil(each / 2) : each;
    for (const [how, breaks] of Object.entries(BREAKS)) {
      for (let turn = 0; turn < count; turn++) {
        const bytes = breaks(whole, chance(++seed * 2_654_435 | 1));
        yield {name: `${kind}, ${how}, ${turn}`, file: new File([bytes as BlobPart], `${kind} ${how} ${turn}.${kind.slice(0, 4)}`)};
      }
    }
  }
}

/** Longest a file may take, ms: whatever opens in that time does not hang. */
const PATIENCE = 10_000;

function inTime<T>(job: Promise<T>, what: string): Promise<T> {
  return new Promise((resolve, reject) => {
    const end = setTimeout(() => { reject(new Error(`${what} hangs`)); }, PATIENCE);
    job.then(resolve, reject).finally(() => { clearTimeout(end); });
  });
}

describe('broken picture files', () => {
  it('open or are refused with a reason; none hangs, none throws, and the photo that was open answers still', async function () {
    this.timeout(120_000);
    const open = await openPhoto(await drawn(20, 10, (pen) => { pen.fillRect(0, 0, 20, 10); }));
    if (isPhotoProblem(open)) throw new Error(open.problem);
    const outcomes: Record<string, number> = {};
    let count = 0;
    for await (const {name, file} of broken(EACH)) {
      const result = await inTime(openPhoto(file), name);
      const outcome = isPhotoProblem(result) ? result.problem : 'opened';
      outcomes[outcome] = (outcomes[outcome] ?? 0) + 1;
      count++;
      if (isPhotoProblem(result)) continue;
      const tally = await inTime(result.tally(), `counting ${name}`);
      expect(tally.pixels, name).to.be.at.most(result.width * result.height);
      result.close();
    }
    expect((await open.tally()).pixels).to.equal(200);
    open.close();
    expect(count).to.be.at.least(isChromium ? 200 : 60);
    // The corpus is worth something only while both happen.
    expect(outcomes.opened, JSON.stringify(outcomes)).to.be.greaterThan(0);
    expect(count - (outcomes.opened ?? 0), JSON.stringify(outcomes)).to.be.greaterThan(count / 10);
    // Nothing a decoder does to a file is the device's fault.
    expect(Object.keys(outcomes)).not.to.include('unreadable');
  });

  it('leave on screen what was there, and say which file it was', async function () {
    this.timeout(60_000);
    const whole = await shot('aperture-f11.jpg');
    const el = await stand({tag: 'tonal-chart-reader', state: '', attributes: {}, photo: 'aperture-f11.jpg'});
    const verdict = () => text(el.shadowRoot?.querySelector('.verdict'));
    const before = verdict();
    let refused = 0;
    let at = 0;
    for await (const {name, file} of broken(1)) {
      if (at++ % (isChromium ? 2 : 5)) continue;
      const opened = await inTime(el.open?.(file) ?? Promise.resolve(true), name);
      await el.updateComplete;
      expect(verdict(), name).not.to.equal('');
      if (opened) {
        await el.open?.(whole);
        await waitUntil(() => verdict() === before, `${name}: the whole photo speaks again`, {timeout: 8000});
        continue;
      }
      refused++;
      expect(verdict(), name).to.equal(before);
      expect(text(el.shadowRoot), name).to.contain(file.name);
    }
    expect(refused).to.be.greaterThan(0);
  });
});
