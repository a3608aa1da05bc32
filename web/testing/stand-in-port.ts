/**
 * Stands in for the transport alone: a port of the page that the test writes to and unplugs. As text, because it runs in
 * the page.
 */
export const STAND_IN_PORT = `
  const wire = { isPlugged: true };
  const port = {
    readable: null,
    open: async () => {
      if (!wire.isPlugged) throw new DOMException('no such port', 'NetworkError');
      port.readable = new ReadableStream({ start: (room) => { wire.room = room; } });
    },
    close: async () => undefined,
  };
  Object.defineProperty(navigator, 'serial', { value: { requestPort: async () => port } });
  window.wrenchSends = (text) => wire.room.enqueue(new TextEncoder().encode(text));
  window.wrenchIsPlugged = (isPlugged) => {
    wire.isPlugged = isPlugged;
    if (!isPlugged) wire.room.error(new DOMException('The device has been lost.', 'NetworkError'));
  };
`;
