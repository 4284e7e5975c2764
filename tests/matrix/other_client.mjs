// A neighbour at a client of another make: matrix-js-sdk with its Rust encryption.
//
// One order a line comes in on standard input, as JSON with a number; its result goes out under the
// same number. All that is heard in the rooms goes out as lines with `heard`.
import { webcrypto } from "node:crypto";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { pathToFileURL } from "node:url";

globalThis.crypto ??= webcrypto; // node 18 has it under another name
for (const name of ["debug", "error", "info", "log", "trace", "warn"]) {
  console[name] = () => {};
}
const [, , modules, baseUrl, userId, deviceId, accessToken] = process.argv;
const library = (path) => import(pathToFileURL(join(modules, "matrix-js-sdk", "lib", path)));
const sdk = await library("index.js");
const { OnlySignedDevicesIsolationMode } = await library("crypto-api/index.js");

const write = (line) => process.stdout.write(JSON.stringify(line) + "\n");
const client = sdk.createClient({ baseUrl, userId, deviceId, accessToken });

async function report(event) {
  if (event.isBeingDecrypted() || (event.isEncrypted() && event.shouldAttemptDecryption())) {
    return; // told once it was tried to read it
  }
  const encryption = event.isEncrypted()
    ? await client.getCrypto().getEncryptionInfoForEvent(event)
    : null;
  write({
    heard: {
      room_id: event.getRoomId(),
      event_id: event.getId(),
      sender: event.getSender(),
      type: event.getType(),
      content: event.getContent(),
      relation: event.getWireContent()["m.relates_to"] ?? null,
      encrypted: event.isEncrypted(),
      failure: event.isDecryptionFailure() ? event.decryptionFailureReason : null,
      shield: encryption === null ? null : encryption.shieldColour,
    },
  });
}

// What each order does; its result must be plain JSON, or nothing.
const orders = {
  join: async ({ room }) => {
    await client.joinRoom(room);
    while (!(await client.getCrypto().isEncryptionEnabledInRoom(room))) {
      await new Promise((done) => setTimeout(done, 20));
    }
  },
  send: ({ room, type, content }) => client.sendEvent(room, type, content),
  redact: ({ room, event }) => client.redactEvent(room, event),
  // Have the account sign its own devices, this one first.
  sign: ({ password }) =>
    client.getCrypto().bootstrapCrossSigning({
      authUploadDeviceSigningKeys: (upload) =>
        upload({
          type: "m.login.password",
          identifier: { type: "m.id.user", user: userId },
          password,
        }),
    }),
  // From now on only devices that their owners have signed are written to and read.
  trustSignedOnly: () =>
    client.getCrypto().setDeviceIsolationMode(new OnlySignedDevicesIsolationMode()),
};

await client.initRustCrypto({ useIndexedDB: false });
client.on(sdk.MatrixEventEvent.Decrypted, report);
client.on(sdk.RoomEvent.Timeline, report);
const ready = new Promise((done) => {
  client.on(sdk.ClientEvent.Sync, (state) => state === "PREPARED" && done());
});
await client.startClient({ initialSyncLimit: 20, pendingEventOrdering: "detached" });
await ready;
write({ number: 0, result: "ready" });

for await (const line of createInterface({ input: process.stdin })) {
  const { number, order, ...given } = JSON.parse(line);
  try {
    write({ number, result: (await orders[order](given)) ?? null });
  } catch (error) {
    write({ number, error: String(error) });
  }
}
process.exit(0);
