interface Policy { createScriptURL(address: string): unknown }
interface PolicyFactory {
  createPolicy(name: string, rules: {readonly createScriptURL: (address: string) => string}): Policy;
}

let policy: Policy | null | undefined;

/**
 * The address of the photo worker as pages with `require-trusted-types-for 'script'` want it: vouched for by the
 * policy `lampblack`, which lets through nothing but that worker and a script made in this page. The address itself
 * where the browser knows no such types, or where the page allows no policy of that name.
 */
export function trusted(address: string): string {
  if (policy === undefined) policy = makePolicy();
  return (policy ? policy.createScriptURL(address) : address) as string;
}

function makePolicy(): Policy | null {
  const {trustedTypes} = globalThis as {trustedTypes?: PolicyFactory};
  try {
    return trustedTypes?.createPolicy('lampblack', {createScriptURL: vouch}) ?? null;
  } catch {
    return null;
  }
}

function vouch(address: string): string {
  const {protocol, pathname} = new URL(address);
  if (protocol !== 'blob:' && !pathname.endsWith('/photo-worker.js')) throw new TypeError(`no worker of ours: ${address}`);
  return address;
}
