/** Done once what is drawn by now has been painted; at once where the page is not on the screen. */
export const painted = async (): Promise<void> => {
  if (document.hidden) return;
  await new Promise<void>((done) => {
    // a page that goes out of sight has no frames any more
    document.addEventListener('visibilitychange', () => done(), { once: true });
    requestAnimationFrame(() => {
      // a message comes after the frame that this callback is part of
      const { port1, port2 } = new MessageChannel();
      port1.addEventListener('message', () => {
        port1.close();
        done();
      });
      port1.start();
      port2.postMessage(null);
    });
  });
};
