/** Strict content policies for the pages of tests/pages/csp, chosen by `?policy=`. */
const STRICT = ["default-src 'none'", "script-src 'self'", "style-src 'self'", 'img-src \'self\' blob:', "require-trusted-types-for 'script'"];

const POLICIES = {
  strict: [...STRICT, "worker-src 'self'", 'trusted-types lit-html lampblack'],
  workerless: [...STRICT, "worker-src 'none'"],
};

/** A middleware of the test server. */
export function policyMiddleware(context, next) {
  if (context.path.startsWith('/tests/pages/csp/') && context.path.endsWith('.html')) {
    const policy = POLICIES[new URLSearchParams(context.search).get('policy')];
    if (policy) context.set('Content-Security-Policy', policy.join('; '));
  }
  return next();
}
