/** A server that goes away: the site stands at /away/ too, until a test says that it is gone. Then nobody answers there, until it is said to be there again. */
const gone = new Set();

/** The site at /away/NAME/, while it is not gone. Answers are told not to be kept by the browser itself. */
export async function awayMiddleware(context, next) {
  const [, name, rest] = /^\/away\/([\w-]+)\/(.*)$/.exec(context.url) ?? [];
  if (name === undefined) return next();
  if (gone.has(name)) {
    context.req.socket.destroy();
    context.respond = false;
    return undefined;
  }
  context.url = `/site/${rest}`;
  await next();
  context.set('cache-control', 'no-store');
  return undefined;
}

/** The commands `gone`, from which on nobody answers under that name, and `there`, from which on somebody does again. */
export function gonePlugin() {
  return {
    name: 'gone',
    executeCommand({command, payload}) {
      if (command === 'gone') gone.add(payload);
      else if (command === 'there') gone.delete(payload);
      else return undefined;
      return true;
    },
  };
}
