// The content security policy of every page that is published.

export const POLICY = [
  "default-src 'none'",
  // 'wasm-unsafe-eval' allows compiling WebAssembly and nothing else.
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "style-src 'self'",
  // blob: and data: for pictures of the site and exported drawings.
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');
