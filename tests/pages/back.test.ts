import {expect, waitUntil} from '@open-wc/testing';
import {executeServerCommand} from '@web/test-runner-commands';

interface Told {
  readonly page: string;
  readonly persisted: boolean;
  readonly reasons?: readonly string[];
  readonly left?: readonly string[];
  readonly found?: readonly string[];
  readonly turned?: readonly string[];
}

/** The answer of a page of this name, once it has come back. */
async function told(page: string): Promise<Told | undefined> {
  return (await executeServerCommand('told') as readonly Told[]).find((each) => each.page === page);
}

describe('a page left and come back to', () => {
  it('is kept by the browser with its elements, its open photo and what a reader set, and they go on working', async function () {
    this.timeout(60_000);
    // WebKit's small browser opens no window for a page without a reader's own press.
    if (!/Chrome|Firefox/.test(navigator.userAgent)) this.skip();
    const page = `?${Date.now()}`;
    const address = await executeServerCommand('elsewhere') as string;
    // Nobody's opener: a page that another can reach is not kept.
    open(`${address}tests/pages/back/page.html${page}`, '_blank', 'noopener');
    await waitUntil(() => told(page), 'the page has come back', {timeout: 40_000, interval: 200});
    const answer = await told(page) as Told;
    expect(await executeServerCommand('home'), 'windows closed').to.equal(1);
    expect(answer.persisted, `kept, not loaded anew: ${answer.reasons?.join(', ') ?? ''}`).to.equal(true);
    expect(answer.found).to.deep.equal(answer.left);
    for (const [at, said] of (answer.turned ?? []).entries()) expect(said).not.to.equal(answer.left?.[at]);
    expect(answer.turned).to.have.length(3);
  });
});
