/**
 * What a page of the program may load and from where: its own parts from its own address, and nothing
 * else. `wasm-unsafe-eval` lets WebAssembly be compiled, which PNGs and pictures of PDFs are made by;
 * it lets no text become a script.
 */
const rules: Readonly<Record<string, string>> = {
  'default-src': "'none'",
  'script-src': "'self' 'wasm-unsafe-eval'",
  'style-src': "'self'",
  'font-src': "'self'",
  'img-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

const written = (of: Readonly<Record<string, string>>): string =>
  Object.entries(of)
    .map(([name, value]) => `${name} ${value}`)
    .join('; ');

/** The content policy as the page itself carries it. */
export const pagePolicy = written(rules);

/**
 * What a server says of every part of the program. Workers have their policy from here alone, and only a
 * server can say that no other page may frame this one. Places are asked for by the walk, nothing else is.
 */
export const partHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': written({ ...rules, 'frame-ancestors': "'none'" }),
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
  'Permissions-Policy': 'geolocation=(self), camera=(), microphone=(), payment=(), usb=()',
};
