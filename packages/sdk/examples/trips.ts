// A trip page: the Quillbarrow Packet shows, for a week, which hours of which site still have red. One call.
import { Sunfathom, type SunfathomOptions } from "@sunfathom/sdk";

const sites = [
  { name: "Gannet Stair", visibility_m: 25, water_hue: "blue", depth_m: 12 },
  { name: "Old Mole", visibility_m: 12, water_hue: "blue_green", depth_m: 8 },
  { name: "Peat Sound", visibility_m: 8, water_hue: "green", depth_m: 6 },
  { name: "Far Ledge", visibility_m: 30, water_hue: "blue", depth_m: 20 },
] as const;
const days = [7, 8, 9, 10, 11, 12, 13].map((day) => `2026-12-${String(day).padStart(2, "0")}`);
const hours = [7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17].map((hour) => `${String(hour).padStart(2, "0")}:00`);
const times = days.flatMap((day) => hours.map((hour) => `${day}T${hour}`));

export async function week(options: SunfathomOptions): Promise<string[]> {
  const client = new Sunfathom(options);
  const batch = {
    operation: "attenuation",
    scene: { latitude_deg: -47.3, longitude_deg: -128.4, time_zone: "Etc/GMT+9" },
    vary: [
      { local_time: times },
      {
        visibility_m: sites.map(({ visibility_m }) => visibility_m),
        water_hue: sites.map(({ water_hue }) => water_hue),
        depth_m: sites.map(({ depth_m }) => depth_m),
      },
    ],
  } as const;
  const lines: string[] = [];
  const asked = client.batches.run(batch, { fields: ["depths.red_left_percent.likely"] });
  for await (const { at: [time = 0, site = 0] = [], answer, problem } of asked) {
    const where = `${times[time]?.replace("T", " ")} ${sites[site]?.name}`;
    const left = answer?.depths[0]?.red_left_percent.likely;
    // Answers come when they are ready, not in the order asked.
    lines[time * sites.length + site] =
      `${where}: ${left === undefined ? problem?.message : `${left} % of red left`}`;
  }
  return lines;
}
