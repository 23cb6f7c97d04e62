// A booking page: the Quillbarrow Dive Shed prints a crate label for each guest of a day's dives.
import { InvalidSceneError, type KitItem, Sunfathom, type SunfathomOptions } from "@sunfathom/sdk";

const shelf: KitItem[] = [0.3, 0.6, 0.9, 1.2].flatMap((filter_density) =>
  (["red", "magenta", "blue"] as const).map((filter_kind): KitItem => {
    return { id: `${filter_kind} ${filter_density}`, item: "lens_filter", filter_kind, filter_density };
  }),
);

const sites = [
  { name: "Gannet Stair", visibility_m: 25, water_hue: "blue", min_depth_m: 5, max_depth_m: 18 },
  { name: "Old Mole", visibility_m: 12, water_hue: "blue_green", min_depth_m: 3, max_depth_m: 10 },
  { name: "Peat Sound", visibility_m: 8, water_hue: "green", min_depth_m: 4, max_depth_m: 15 },
] as const;
const hours = ["09:00", "10:30", "12:00", "13:30", "15:00"];
const cameras = ["phone", "action", "interchangeable"] as const;

export async function labels(options: SunfathomOptions): Promise<string[]> {
  const client = new Sunfathom({ ...options, concurrency: 4 });
  const guests = sites.flatMap((site) =>
    hours.flatMap((hour) => cameras.map((camera) => ({ site, hour, camera }))),
  );
  return Promise.all(
    guests.map(async ({ site: { name, ...site }, hour, camera }) => {
      try {
        const { filter_id, verdict, reasons, cautions } = await client.calculations.filterChoice(
          {
            ...site,
            latitude_deg: -47.3,
            longitude_deg: -128.4,
            local_time: `2026-12-10T${hour}`,
            time_zone: "Etc/GMT+9",
            camera_class: camera,
            kit: shelf,
          },
          { fields: ["filter_id", "verdict", "reasons.text"] },
        );
        const tie = verdict === "clear" ? "" : " (a close call: ask the guest)";
        const take = `${name} ${hour}, ${camera}: ${filter_id ?? "no filter"}${tie}`;
        return [take, reasons[0]?.text, ...cautions.map(({ text }) => text)].join("\n");
      } catch (error) {
        if (!(error instanceof InvalidSceneError)) throw error;
        return error.errors.map(({ pointer, message }) => `${pointer}: ${message}`).join("\n");
      }
    }),
  );
}
