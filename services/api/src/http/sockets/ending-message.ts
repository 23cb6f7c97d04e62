import { IncomingMessage } from "node:http";

/**
 * A request that ends the reading of its connection where that has been closed. What has arrived with it would otherwise be
 * read to its end, and an object made of each request in it: of thousands in one packet that takes longer than others
 * should wait. Node.js reads nothing behind a request for another protocol, and closes a connection that nobody upgrades.
 */
export class EndingMessage extends IncomingMessage {
  get upgrade(): boolean {
    return this.socket.destroyed || isUpgrade.has(this);
  }

  set upgrade(is: boolean) {
    if (is) isUpgrade.add(this);
    else if (is === false) isUpgrade.delete(this);
  }
}

/** Beside the object: its base sets the property before a field of it would be there. */
const isUpgrade = new WeakSet<IncomingMessage>();
