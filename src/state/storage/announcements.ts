import { headerIn, type Header } from './records';

/** Tells the other tabs what was saved. */
export interface Announcements {
  announce(header: Header): void;
  subscribe(listener: (header: Header) => void): void;
}

/** Without BroadcastChannel a tab learns of another's save only at its own next save. */
export function openAnnouncements(): Announcements {
  const channel = openChannel();
  return {
    announce: (header) => channel?.postMessage(header),
    subscribe: (listener) => {
      channel?.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
        const header = headerIn(data);
        if (header !== null) listener(header);
      });
    },
  };
}

function openChannel(): BroadcastChannel | null {
  try {
    return new BroadcastChannel('windtoll');
  } catch {
    return null;
  }
}
