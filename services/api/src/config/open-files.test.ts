import { describe, expect, it } from "vitest";
import { fitConnections, openFilesAllowed } from "./open-files.js";

const wanted = { connections: 4096, connectionsPerAddress: 256 };

describe("connections", () => {
  it("stay as configured where there are files enough, or no limit is known", () => {
    for (const files of [undefined, 4096 + 128, 1_000_000])
      expect(fitConnections(wanted, files)).toEqual({ ...wanted, lowered: undefined });
  });

  it("are lowered to what the system allows, with a line that says so", () => {
    const { lowered, ...fitted } = fitConnections(wanted, 1024);
    expect(fitted).toEqual({ connections: 896, connectionsPerAddress: 256 });
    expect(lowered).toMatch(/MAX_CONNECTIONS is 4096.* 1024 open files: 896 connections.* 256 of one/);
  });

  it("of one address are never all that there are", () => {
    expect(fitConnections(wanted, 256)).toMatchObject({ connections: 128, connectionsPerAddress: 64 });
  });

  it("that would be next to none stop the start", () => {
    expect(() => fitConnections(wanted, 129)).toThrow("The system allows 129 open files, too few");
  });
});

it("the system's limit is read", () => {
  expect(openFilesAllowed()).toBeGreaterThan(100);
});
