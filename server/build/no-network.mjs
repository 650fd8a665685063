// No bundle can reach a network: whatever a library brings along for it is taken out while bundling, and a test reads every bundle.

/** Functions of the surroundings that reach a network. In a bundle these names hold nothing. */
export const noNetworkGlobals = Object.fromEntries(
  [
    'fetch',
    'XMLHttpRequest',
    'WebSocket',
    'WebSocketStream',
    'WebTransport',
    'EventSource',
    'RTCPeerConnection',
  ].flatMap((name) =>
    [name, `globalThis.${name}`, `window.${name}`, `self.${name}`].map((spelling) => [spelling, 'undefined']),
  ),
);

/** Parts of Node that reach a network. */
export const networkModules = ['net', 'http', 'https', 'http2', 'tls', 'dgram', 'dns', 'dns/promises', 'inspector'];

/**
 * The protocol's library can also speak through sockets. We speak through the channel or the streams of the program that started us,
 * so its sockets are replaced by a refusal.
 */
export const noNetworkModules = {
  name: 'no-network-modules',
  setup({ onResolve, onLoad }) {
    const filter = new RegExp(`^(node:)?(${networkModules.join('|')})$`);
    onResolve({ filter }, ({ path }) => ({ path, namespace: 'no-network' }));
    onLoad({ filter: /./, namespace: 'no-network' }, () => ({ contents: refusal, loader: 'js' }));
  },
};

const refusal = `
function refuse() { throw new Error('Traywright opens no connection over a network or a socket.'); }
module.exports = { createServer: refuse, createConnection: refuse, connect: refuse, request: refuse, get: refuse };
`;
